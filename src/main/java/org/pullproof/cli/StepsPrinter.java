package org.pullproof.cli;

import java.util.List;
import java.util.stream.Stream;
import org.pullproof.tuneup.Afterwards.Again;
import org.pullproof.tuneup.PartFinding;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.tuneup.TuneUpFindings.Block;
import org.pullproof.tuneup.TuneUpFindings.OffCar;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.units.Figures;

/** Prints where a tune-up stands. */
final class StepsPrinter {
    private static final String LAW = "Parts of the emission control are refitted: local law says what may be removed.";

    private final Output output;

    StepsPrinter(Output output) {
        this.output = output;
    }

    static Json json(TuneUpFindings findings) {
        return new Json()
                .put("answer", findings.answer().plain())
                .put("steps", findings.steps().stream().map(StepsPrinter::json).toList())
                .put(
                        "offCar",
                        findings.offCar().stream().map(StepsPrinter::json).toList())
                .put(
                        "startBlockedBy",
                        findings.startBlockedBy().stream()
                                .map(block ->
                                        new Json().put("what", block.what()).put("step", block.step()))
                                .toList())
                .put("leftOff", findings.leftOff())
                .put("wires", findings.wireRemarks())
                .put("plans", List.copyOf(findings.plan().choices().keySet()))
                .put("because", findings.plan().because())
                .put("parts", findings.parts().stream().map(StepsPrinter::json).toList())
                .put("toBuyCost", findings.toBuy().total().map(cost -> cost.value()))
                .put("currency", findings.toBuy().total().map(cost -> cost.currency()))
                .put("settings", findings.settings().told())
                .put("timing", findings.settings().timing())
                .put("settingRemarks", findings.settings().remarks())
                .put(
                        "afterwards",
                        findings.afterwards().again().stream()
                                .map(StepsPrinter::json)
                                .toList())
                .put("breakIn", findings.afterwards().breakIn())
                .put("fullLoadLock", findings.afterwards().fullLoadLock())
                .put("minutesLeft", findings.plan().minutesLeft())
                .put("minutesAtMost", findings.plan().minutesAtMost());
    }

    private static Json json(OffCar off) {
        Json json = new Json()
                .put("part", off.part())
                .put("step", off.step())
                .put("since", off.since().toString());
        off.fitted().ifPresent(fitted -> json.put("backOnCylinders", List.copyOf(fitted)));
        off.stays().ifPresent(why -> json.put("staysOffBecause", why));
        return off.note().isEmpty() ? json : json.put("note", off.note());
    }

    static Json json(PartFinding part) {
        return new Json()
                .put("part", part.part())
                .put("step", part.step())
                .put("fate", part.words())
                .put("price", part.price().map(price -> price.value()))
                .put("currency", part.price().map(price -> price.currency()))
                .put("age", part.age())
                .put("judged", part.told().flatMap(told -> told.price()).isEmpty());
    }

    static Json json(Again again) {
        return new Json()
                .put("what", again.what())
                .put("step", again.step())
                .put("day", again.day().toString())
                .put("when", again.when())
                .put("done", again.done());
    }

    private static Json json(StepState step) {
        return new Json()
                .put("id", step.step().id())
                .put("title", step.step().title())
                .put("state", step.state().key())
                .put("needs", step.step().needs())
                .put("minutes", step.step().minutes())
                .put("takesOff", step.step().takesOff())
                .put("putsBack", step.step().putsBack())
                .put("backBeforeStart", step.step().backBeforeStart())
                .put("tools", step.step().outfit().tools())
                .put("figures", step.step().outfit().figures())
                .put("cautions", step.step().cautions());
    }

    void print(TuneUpFindings findings) {
        output.print(findings.answer().plain());
        output.print("");
        output.print(table(findings.steps()));
        output.print("Left to do: typically " + findings.plan().minutesLeft() + " min, nine of ten below "
                + findings.plan().minutesAtMost() + " min (judgement).");
        list("Order:", findings.plan().because());
        list("Off the car:", findings.offCar().stream().map(StepsPrinter::words).toList());
        list(
                "In the way of the start:",
                findings.startBlockedBy().stream().map(Block::what).toList());
        list("Left off on purpose:", findings.leftOff());
        if (!findings.leftOff().isEmpty()) {
            output.print(LAW);
        }
        list("Wires:", findings.wireRemarks());
        list(
                "To buy"
                        + findings.toBuy()
                                .total()
                                .map(cost -> ", about " + Figures.money(cost) + ":")
                                .orElse(":"),
                findings.toBuy().items().stream()
                        .map(item -> item.part() + ", " + Figures.money(item.price())
                                + (item.judged() ? " (judgement)" : ""))
                        .toList());
        list("Settings:", settings(findings.settings()));
        list(
                "Look at again:",
                findings.afterwards().again().stream()
                        .filter(again -> !again.done())
                        .map(again -> again.what() + ": " + again.when())
                        .toList());
        list("Bedding in:", findings.afterwards().breakIn());
        findings.afterwards().fullLoadLock().ifPresent(lock -> output.print("! " + lock));
    }

    private static List<String> settings(TuneUpFindings.Settings settings) {
        return Stream.of(settings.timing().stream(), settings.told().stream(), settings.remarks().stream())
                .flatMap(lines -> lines)
                .toList();
    }

    private static String words(OffCar off) {
        String fitted = off.fitted()
                .filter(cylinders -> !cylinders.isEmpty())
                .map(cylinders -> ", back on " + CylinderList.words(cylinders) + " only")
                .orElse("");
        String note = off.note().isEmpty() ? "" : ": " + off.note();
        return off.part() + fitted + ", since " + off.since().toString().replace('T', ' ') + note
                + off.stays().map(why -> "; stays off: " + why).orElse("");
    }

    private static Table table(List<StepState> steps) {
        Table table = new Table().words("id").words("step").words("state").figures("min");
        steps.forEach(step -> table.row(
                step.step().id(),
                step.step().title(),
                step.words(),
                String.valueOf(step.step().minutes())));
        return table;
    }

    private void list(String head, List<String> lines) {
        if (!lines.isEmpty()) {
            output.print("");
            output.print(head);
            lines.forEach(line -> output.print("- " + line));
        }
    }
}
