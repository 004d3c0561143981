package org.pullproof.report;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Cautions;
import org.pullproof.car.Access;
import org.pullproof.car.Fact;
import org.pullproof.report.ReportModel.Answer;
import org.pullproof.report.ReportModel.Item;
import org.pullproof.session.Picture;
import org.pullproof.session.Session;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;

/** Lays out what one appraisal says as a report. Nothing is computed here: every figure comes from the appraisal. */
public final class ReportMaker {
    private static final String PRECEDENCE =
            "The maker's service manual and a licensed professional take precedence over anything shown here.";

    private final Cautions cautions;

    /**
     * @param cautions by act
     */
    public ReportMaker(Cautions cautions) {
        this.cautions = cautions;
    }

    /** The whole report with its photographs in words only. */
    public ReportModel make(Appraisal appraisal, LocalDateTime made) {
        return make(appraisal, made, ReportPart.all(), picture -> Optional.of(new byte[0]));
    }

    /**
     * @param appraisal what the session amounts to
     * @param made when the report is made
     * @param parts those wanted; cautions, methods and standards go with every one
     * @param small makes a small JPEG of a picture; empty where its file is lost or was changed
     */
    public ReportModel make(
            Appraisal appraisal, LocalDateTime made, Set<ReportPart> parts, Function<Picture, Optional<byte[]>> small) {
        Wording wording = new Wording(appraisal.figures());
        Session session = appraisal.session();
        return new ReportModel(
                ReportPart.name(parts),
                session.car().name(),
                Wording.engine(session.profile()),
                head(session, wording, made),
                answers(appraisal, parts),
                new ChosenSections(appraisal, wording, parts, cautions, small).all(),
                foot(appraisal, wording, parts));
    }

    private static List<Item> head(Session session, Wording wording, LocalDateTime made) {
        return List.of(
                new Item("made", "Made", Wording.minute(made)),
                new Item("setupNow", "Setup now", session.present().name()),
                new Item("odometer", "Odometer", odometer(session, wording)),
                new Item("standard", "Standard", session.standard().words()),
                new Item("units", "Units", wording.units()),
                new Item(
                        "access",
                        "Access",
                        session.car().access().map(Access::words).orElse("not told")));
    }

    private static String odometer(Session session, Wording wording) {
        return session.car()
                .quantity(Fact.ODOMETER)
                .map(read -> wording.figures().of(read.si(), Shown.DISTANCE))
                .orElse("not told");
    }

    /** The question of each part; the summary asks them all. */
    private static List<Answer> answers(Appraisal appraisal, Set<ReportPart> parts) {
        List<Answer> answers = new ArrayList<>();
        if (asked(parts, ReportPart.HEALTH)) {
            answers.add(new Answer(
                    "sound", "Is this engine sound?", appraisal.health().answer()));
        }
        if (asked(parts, ReportPart.TUNE_UP)) {
            answers.add(
                    new Answer("inTune", "Is it in tune?", appraisal.tuneUp().answer()));
        }
        if (asked(parts, ReportPart.CHANGES) || parts.contains(ReportPart.DYNO)) {
            answers.add(new Answer("changes", "Which adjustment made power?", madePower(appraisal)));
        }
        if (asked(parts, ReportPart.MONEY)) {
            WorthWords worth = new WorthWords(appraisal.worth());
            answers.add(new Answer(
                    "worth",
                    "Is it worth more money?",
                    parts.contains(ReportPart.MONEY) ? worth.decision() : worth.whole()));
        }
        return answers;
    }

    private static boolean asked(Set<ReportPart> parts, ReportPart part) {
        return parts.contains(part) || parts.contains(ReportPart.SUMMARY);
    }

    private static Sentence madePower(Appraisal appraisal) {
        return new Sentence(appraisal.changes().answer().marked() + " "
                + appraisal.dyno().answer().marked());
    }

    private static List<String> foot(Appraisal appraisal, Wording wording, Set<ReportPart> parts) {
        List<String> foot = new ArrayList<>();
        if (asked(parts, ReportPart.CHANGES) || parts.contains(ReportPart.DYNO)) {
            air(appraisal, wording).ifPresent(foot::add);
        }
        if (!appraisal.worth().tooEarly()) {
            foot.add("Costs and chances marked “judgement” are defaults the owner can edit.");
        }
        foot.add(PRECEDENCE);
        return foot;
    }

    private static Optional<String> air(Appraisal appraisal, Wording wording) {
        return appraisal
                .dyno()
                .latestAir()
                .map(air -> "Air: " + wording.air(air)
                        + appraisal
                                .dyno()
                                .latestFactor()
                                .map(factor -> " → " + Wording.factor(factor))
                                .orElse("")
                        + ".");
    }
}
