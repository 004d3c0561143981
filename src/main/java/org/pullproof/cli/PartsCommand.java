package org.pullproof.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.tuneup.PartFinding;
import org.pullproof.tuneup.PartRecord;
import org.pullproof.tuneup.PartRecord.Fate;
import org.pullproof.tuneup.PartsToBuy;
import org.pullproof.units.Dimension;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the tune-up uses up: still to buy, bought, or the old one kept. */
@Command(
        name = "parts",
        description = "Lists what the planned steps use up, and keeps what was bought, is wanted or was kept.",
        footer = {
            "",
            "Example: pullproof parts grey-coupe --bought \"spark plugs=28USD\" --kept \"plug wires=2021-05-03\""
        })
final class PartsCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final Clock clock;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Option(
            names = "--bought",
            paramLabel = "PART=MONEY",
            description = "What was paid; it stands among the money spent. Repeatable.")
    private Map<String, String> bought = Map.of();

    @Option(names = "--buy", paramLabel = "PART=MONEY", description = "Still to buy, at this price; repeatable.")
    private Map<String, String> buy = Map.of();

    @Option(
            names = "--kept",
            paramLabel = "PART=WHEN",
            description = "The old one was kept; fitted on a day or at an odometer reading: 2021-05-03 or 61000mi."
                    + " Nothing behind = where that is not known. Repeatable.")
    private Map<String, String> kept = Map.of();

    @Option(names = "--forget", paramLabel = "PART", description = "Forget what was told of this part; repeatable.")
    private List<String> forget = List.of();

    @Option(
            names = "--note",
            paramLabel = "TEXT",
            description = "Which one fits, where it was bought; goes with every part told on this line.")
    private Optional<String> note = Optional.empty();

    @Option(
            names = "--on",
            paramLabel = "DATE",
            converter = Arguments.DateArgument.class,
            description = "The day it was bought or looked at: 2026-06-14; without it, today.")
    private Optional<LocalDate> on = Optional.empty();

    @Mixin
    private Output output;

    PartsCommand(Toolbox tools, Clock clock) {
        this.tools = tools;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        var found = tools.appraise()
                .of(told(tools.desk().open(session)), output.figures(tools))
                .tuneUp();
        if (output.json()) {
            output.print(new Json()
                    .put("parts", found.parts().stream().map(StepsPrinter::json).toList())
                    .put(
                            "toBuy",
                            found.toBuy().items().stream()
                                    .map(PartsCommand::json)
                                    .toList())
                    .put("toBuyCost", found.toBuy().total().map(Money::value))
                    .put("currency", found.toBuy().total().map(Money::currency)));
        } else {
            output.print(table(found.parts()));
            output.print(found.toBuy()
                    .total()
                    .map(cost -> "Still to buy: about " + Figures.money(cost) + ".")
                    .orElse("Nothing is left to buy."));
        }
        return Output.DONE;
    }

    private OpenSession told(OpenSession before) throws Exception {
        OpenSession open = before;
        for (String part : forget) {
            open = tools.recordParts().forget(open, part);
        }
        for (Map.Entry<String, String> part : bought.entrySet()) {
            open = tools.recordParts().record(open, priced(part, Fate.BOUGHT));
        }
        for (Map.Entry<String, String> part : buy.entrySet()) {
            open = tools.recordParts().record(open, priced(part, Fate.TO_BUY));
        }
        for (Map.Entry<String, String> part : kept.entrySet()) {
            open = tools.recordParts()
                    .record(open, kept(part.getKey(), part.getValue().strip()));
        }
        return open;
    }

    private LocalDate day() {
        return on.orElseGet(() -> LocalDate.now(clock));
    }

    private PartRecord priced(Map.Entry<String, String> part, Fate fate) {
        return new PartRecord(
                part.getKey(),
                fate,
                Optional.of(Money.parse(part.getValue())),
                note.orElse(""),
                day(),
                Optional.empty(),
                Optional.empty());
    }

    private PartRecord kept(String part, String when) {
        boolean date = when.matches("\\d{4}-\\d{2}-\\d{2}");
        return new PartRecord(
                part,
                Fate.KEPT,
                Optional.empty(),
                note.orElse(""),
                day(),
                date ? Optional.of(LocalDate.parse(when)) : Optional.empty(),
                date || when.isEmpty() ? Optional.empty() : Optional.of(Quantity.parse(when, Dimension.LENGTH)));
    }

    private static Json json(PartsToBuy.Item item) {
        return new Json()
                .put("part", item.part())
                .put("price", item.price().value())
                .put("currency", item.price().currency())
                .put("note", item.note())
                .put("judged", item.judged());
    }

    private static Table table(List<PartFinding> parts) {
        Table table = new Table()
                .words("part")
                .words("step")
                .words("fate")
                .figures("price")
                .words("age");
        parts.forEach(part -> table.row(
                part.part(),
                part.step().orElse(""),
                part.words(),
                part.price().map(Figures::money).orElse(""),
                part.age().orElse("")));
        return table;
    }
}
