package org.pullproof.report;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.NextStep;
import org.pullproof.report.ReportModel.Item;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;

/** What to do now, with the cautions that belong to it. */
final class NextSection {
    private NextSection() {}

    static Section of(Appraisal appraisal) {
        NextStep next = appraisal.next();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(new Sentence("**" + next.action() + ".** " + next.why())));
        blocks.add(new Block.Items(List.of(
                new Item("settles", "What it settles", next.settles()),
                new Item("minutes", "Takes about", next.minutes() + String.valueOf(Figures.NO_BREAK_SPACE) + "min"),
                new Item("cost", "Costs", Figures.money(next.cost())),
                new Item("needs", "The owner permits", next.needs().words()))));
        blocks.addAll(new FaultBlocks(appraisal.health().faults()).nextTests(next.why()));
        if (!next.cautions().isEmpty()) {
            blocks.add(new Block.Points("cautions", "Cautions for it", next.cautions(), true));
        }
        return new Section("next", "What to do next", "", blocks);
    }
}
