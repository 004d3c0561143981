package org.pullproof.cli;

import java.util.concurrent.Callable;
import org.pullproof.app.Toolbox;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Rotor;
import org.pullproof.engine.TdcTable;
import org.pullproof.units.Figures;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows where each cylinder stands at top dead centre on compression. */
@Command(
        name = "tdc",
        description = "Shows top dead centre on compression of each cylinder in firing order: turn of the crank, mark"
                + " on the damper, turn of the rotor.",
        footer = {"", "Example: pullproof tdc v6-odd-fire-90"})
final class TdcCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(paramLabel = "PROFILE", description = "A profile's id, or a profile file of your own.")
    private String profile;

    @Mixin
    private Output output;

    TdcCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        EngineProfile engine = tools.profiles().find(profile);
        TdcTable table = TdcTable.of(engine);
        if (output.json()) {
            output.print(new Json()
                    .put(
                            "cylinders",
                            table.rows().stream().map(TdcCommand::json).toList()));
        } else {
            output.print(words(engine, table));
            output.print("Degrees after top dead centre of cylinder "
                    + table.rows().get(0).number() + " on compression" + direction(engine) + ".");
        }
        return Output.DONE;
    }

    private static Json json(TdcTable.Row row) {
        return new Json()
                .put("number", row.number())
                .put("crankDegrees", row.crankDegrees())
                .put("damperDegrees", row.damperDegrees())
                .put("rotorDegrees", row.rotorDegrees());
    }

    private static Table words(EngineProfile engine, TdcTable table) {
        boolean distributor = engine.rotor() != Rotor.NONE;
        Table words = new Table().figures("cylinder").figures("crank").figures("damper mark");
        if (distributor) {
            words.figures("rotor");
        }
        for (TdcTable.Row row : table.rows()) {
            String number = Integer.toString(row.number());
            String crank = row.crankDegrees() + "°";
            String damper = row.damperDegrees() + "°";
            if (distributor) {
                words.row(number, crank, damper, rotor(row));
            } else {
                words.row(number, crank, damper);
            }
        }
        return words;
    }

    private static String rotor(TdcTable.Row row) {
        double degrees = row.rotorDegrees().orElseThrow();
        return Figures.number(degrees, degrees == Math.rint(degrees) ? 0 : 1) + "°";
    }

    private static String direction(EngineProfile engine) {
        return switch (engine.rotor()) {
            case CLOCKWISE -> "; the rotor turns clockwise, seen from above";
            case COUNTERCLOCKWISE -> "; the rotor turns counterclockwise, seen from above";
            case NONE -> "";
        };
    }
}
