package org.pullproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.pullproof.app.AddReadings;
import org.pullproof.app.Toolbox;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Takes in readings from a table. */
@Command(
        name = "add-readings",
        description = "Takes in readings written on a phone or a sheet: all rows or, if one is wrong, none.",
        footer = {
            "",
            "The table is CSV with a header. Columns, in any order: test, cylinder, value, first, strokes, round, supply,",
            "orifice, air, throttle, plugs, engine, crankingVolts, crankingRpm, station, gauge, gaugeStep, note.",
            "An empty cell is \"not recorded\". A wrong word is answered with the words there are.",
            "",
            "Example row: compression-dry,3,155psi,84psi,6,1,,,,open,all-out,warm,10.6V,,,,,"
        })
final class AddReadingsCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(index = "0", paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Parameters(index = "1", paramLabel = "FILE", description = "The table of readings.")
    private Path file;

    @Mixin
    private Output output;

    AddReadingsCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        AddReadings.Outcome outcome = tools.addReadings().add(tools.desk().open(session), file);
        output.complain(outcome.problems());
        if (output.json()) {
            output.print(json(outcome));
        } else if (outcome.problems().isEmpty()) {
            int added = outcome.added().size();
            output.print(added == 1 ? "Took in 1 reading." : "Took in " + added + " readings.");
        }
        return outcome.problems().isEmpty() ? Output.DONE : Output.WRONG_INPUT;
    }

    private static Json json(AddReadings.Outcome outcome) {
        return new Json()
                .put("added", outcome.added().size())
                .put("rows", outcome.rows())
                .put(
                        "problems",
                        outcome.problems().stream().map(CheckCommand::json).toList());
    }
}
