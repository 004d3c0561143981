package org.pullproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.pullproof.app.Toolbox;
import org.pullproof.cli.Arguments.ColumnArgument;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.Drag;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what slows a car down. */
@Command(
        name = "coast-down",
        description = "Tells what slows the car down, A + B·v + C·v², from a coast-down on the road in neutral.",
        footer = {
            "",
            "On a closed, level road without wind and traffic only, once in each direction; tyres warm; the law of the place"
                    + " goes before anything here.",
            "",
            "Example: pullproof coast-down log.csv --mass 1500kg"
        })
final class CoastDownCommand implements Callable<Integer> {
    private static final int STEP_KMH = 10;

    private final Toolbox tools;

    @Parameters(index = "0", paramLabel = "CSV", description = "Time and the car's speed while it coasts.")
    private Path file;

    @Option(
            names = "--mass",
            required = true,
            paramLabel = "M",
            converter = Arguments.MassArgument.class,
            description = "Of the car as it rolled, with what its turning parts add to it.")
    private Quantity mass;

    @Option(
            names = "--column",
            paramLabel = "ROLE=HEADER[:UNIT]",
            converter = ColumnArgument.class,
            description =
                    "Which column is time or roll (here the car's speed), such as roll=Channel 2:km/h; repeatable.")
    private List<ColumnChoice> columns = List.of();

    @Mixin
    private Output output;

    CoastDownCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        Drag drag = tools.readRoll().car(file, mass.si(), columns);
        if (output.json()) {
            output.print(json(drag));
        } else {
            print(drag, output.figures(tools));
        }
        return Output.DONE;
    }

    private static int[] speeds(Drag drag) {
        int first = (int) Math.ceil(drag.slowest() * 3.6 / STEP_KMH);
        int last = (int) Math.floor(drag.fastest() * 3.6 / STEP_KMH);
        return IntStream.rangeClosed(first, last).map(i -> i * STEP_KMH).toArray();
    }

    private static Json json(Drag drag) {
        return new Json()
                .put("aN", drag.a())
                .put("bNsPerM", drag.b())
                .put("cNs2PerM2", drag.c())
                .put("aErrorN", drag.error(0))
                .put("bErrorNsPerM", drag.error(1))
                .put("cErrorNs2PerM2", drag.error(2))
                .put(
                        "losses",
                        IntStream.of(speeds(drag))
                                .mapToObj(speed -> new Json()
                                        .put("speedKmH", speed)
                                        .put("forceN", drag.at(speed / 3.6))
                                        .put("forceErrorN", drag.errorAt(speed / 3.6))
                                        .put("powerKw", drag.watt(speed / 3.6) / 1e3))
                                .toList());
    }

    private void print(Drag drag, Figures figures) {
        output.print("A " + Figures.number(drag.a(), 1) + " ± " + Figures.number(drag.error(0), 1) + " N, B "
                + Figures.number(drag.b(), 2) + " ± " + Figures.number(drag.error(1), 2) + " N·s/m, C "
                + Figures.number(drag.c(), 3) + " ± " + Figures.number(drag.error(2), 3)
                + " N·s²/m²; ± is one standard error from this run alone, wind and slope are not in it.");
        output.print("");
        Table table =
                new Table().figures("km/h").figures("force, N").figures("±, N").figures("power");
        IntStream.of(speeds(drag))
                .forEach(speed -> table.row(
                        Figures.number(speed, 0),
                        Figures.number(drag.at(speed / 3.6), 0),
                        Figures.number(drag.errorAt(speed / 3.6), 1),
                        figures.of(drag.watt(speed / 3.6), Shown.POWER)));
        output.print(table);
    }
}
