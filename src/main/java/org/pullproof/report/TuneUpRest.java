package org.pullproof.report;

import static org.pullproof.report.Block.Column.figures;
import static org.pullproof.report.Block.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.tuneup.Afterwards;
import org.pullproof.tuneup.PartFinding;
import org.pullproof.tuneup.PartRecord;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.units.Figures;

/** What a tune-up used up, how the engine is set, and what is due afterwards. */
record TuneUpRest(TuneUpFindings found, Wording wording) {
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<PartFinding> parts =
                found.parts().stream().filter(part -> !part.words().isEmpty()).toList();
        if (!parts.isEmpty()) {
            blocks.add(parts(parts));
        }
        if (!found.settings().told().isEmpty()) {
            blocks.add(settings());
        }
        afterwards(found.afterwards(), blocks);
        return blocks;
    }

    private Block parts(List<PartFinding> parts) {
        String left = found.toBuy()
                .total()
                .map(cost -> ", still to buy for about " + Figures.money(cost))
                .orElse("");
        return new Block.Table(
                "parts",
                "Parts" + left,
                List.of(
                        words("part", "Part"),
                        words("fate", "What of it"),
                        figures("price", "Price"),
                        words("basis", "Price is"),
                        words("age", "Age"),
                        words("note", "Note")),
                parts.stream().map(TuneUpRest::row).toList());
    }

    private static List<Cell> row(PartFinding part) {
        return List.of(
                Cell.words(part.part()),
                Cell.words(part.words()),
                part.price()
                        .map(price -> Cell.figure(Figures.money(price), price.value()))
                        .orElseGet(() -> Cell.words(Optional.empty())),
                Cell.words(part.price().map(price -> basis(part))),
                Cell.words(part.age()),
                Cell.words(part.told().map(PartRecord::note).filter(note -> !note.isEmpty())));
    }

    private static String basis(PartFinding part) {
        return part.told()
                .filter(told -> told.price().isPresent())
                .map(told -> told.fate() == PartRecord.Fate.BOUGHT ? "paid" : "the owner's")
                .orElse("judgement");
    }

    private Block settings() {
        List<String> points = Stream.of(
                        found.settings().timing().stream(),
                        found.settings().told().stream(),
                        found.settings().remarks().stream())
                .flatMap(lines -> lines)
                .toList();
        return new Block.Points("settings", "Set to", points, false);
    }

    private static void afterwards(Afterwards after, List<Block> blocks) {
        after.fullLoadLock()
                .ifPresent(lock -> blocks.add(new Block.Points("fullLoadLock", "Bedding in", List.of(lock), true)));
        if (!after.breakIn().isEmpty()) {
            blocks.add(new Block.Points("breakIn", "Until then (judgement)", after.breakIn(), false));
        }
        if (!after.again().isEmpty()) {
            blocks.add(new Block.Points(
                    "afterwards",
                    "Looked at again after the tune-up",
                    after.again().stream()
                            .map(due -> due.what() + ": " + due.when() + (due.done() ? ", done" : ""))
                            .toList(),
                    false));
        }
    }
}
