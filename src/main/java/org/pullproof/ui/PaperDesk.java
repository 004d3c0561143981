package org.pullproof.ui;

import java.util.Set;
import java.util.function.Consumer;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.Toolbox;
import org.pullproof.report.Paper;
import org.pullproof.report.ReportPart;
import org.pullproof.ui.paper.PaperActs;
import org.pullproof.ui.shell.SessionViewModel;

/** Saves what is printed of one session: the report, the plan of the dyno day, the run card of the tune-up. */
final class PaperDesk implements PaperActs {
    private final Toolbox tools;
    private final SessionViewModel model;
    private final PaperSaver saver;
    private final Consumer<Paper> liked;

    /**
     * @param liked remembers the paper chosen
     */
    PaperDesk(Toolbox tools, SessionViewModel model, PaperSaver saver, Consumer<Paper> liked) {
        this.tools = tools;
        this.model = model;
        this.saver = saver;
        this.liked = liked;
    }

    @Override
    public void report(Set<ReportPart> parts) {
        Appraisal appraisal = model.appraisal();
        boolean alone = parts.equals(Set.of(ReportPart.HEALTH));
        saver.save(
                model,
                alone ? "The health sheet" : "The report",
                alone ? "health-sheet" : "report",
                (format, paper) ->
                        tools.makeReport().bytes(appraisal, model.open().folder(), parts, format, paper));
    }

    @Override
    public void dayPlan() {
        Appraisal appraisal = model.appraisal();
        saver.save(
                model,
                "The plan of the day",
                "dyno-day",
                (format, paper) -> tools.makeTally().bytes(tools.makeTally().runCard(appraisal), format, paper));
    }

    @Override
    public void runCard() {
        Appraisal appraisal = model.appraisal();
        saver.save(
                model,
                "The run card",
                "run-card",
                (format, paper) -> tools.makeRunCard().bytes(appraisal, format, paper));
    }

    @Override
    public void liked(Paper paper) {
        liked.accept(paper);
    }
}
