package org.pullproof.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.pullproof.app.Toolbox;
import org.pullproof.engine.CrankGeometry;
import org.pullproof.health.leakdown.CrankPush;
import org.pullproof.health.leakdown.LeakTester;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Reduces one leak-down reading. */
@Command(
        name = "leakdown",
        description = "Reduces a leak-down reading: percentage, area of the leak, what the reference tester would show,"
                + " torque on the crank.",
        footer = {
            "",
            "The reference tester is that of FAA AC 43.13-1B: 80 psi; restrictor 0.040 in below 5.00 in of bore, 0.060 in",
            "from there. Without --bore it is the one for bores below 5.00 in. The air around is taken as 101.325 kPa",
            "unless --station says otherwise.",
            "",
            "Regulator at zero, tool off the crank bolt, hands clear before air is let in: the crank may turn.",
            "",
            "Example: pullproof leakdown --supply 80psi --reading 61.8psi --orifice 0.040in"
        })
final class LeakdownCommand implements Callable<Integer> {
    private final Toolbox tools;

    LeakdownCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Option(
            names = "--supply",
            required = true,
            paramLabel = "P",
            converter = Arguments.PressureArgument.class,
            description = "Pressure at the regulator, over the surroundings.")
    private Quantity supply;

    @Option(
            names = "--reading",
            required = true,
            paramLabel = "P",
            converter = Arguments.PressureArgument.class,
            description = "Pressure behind the restrictor, over the surroundings.")
    private Quantity reading;

    @Option(
            names = "--orifice",
            paramLabel = "D",
            converter = Arguments.LengthArgument.class,
            description = "Diameter of the tester's restrictor.")
    private Optional<Quantity> orifice = Optional.empty();

    @Option(
            names = "--station",
            paramLabel = "P",
            converter = Arguments.PressureArgument.class,
            description = "Absolute pressure of the air at the place.")
    private Optional<Quantity> station = Optional.empty();

    @Option(names = "--bore", paramLabel = "L", converter = Arguments.LengthArgument.class, description = "Bore.")
    private Optional<Quantity> bore = Optional.empty();

    @Option(names = "--stroke", paramLabel = "L", converter = Arguments.LengthArgument.class, description = "Stroke.")
    private Optional<Quantity> stroke = Optional.empty();

    @Option(
            names = "--rod",
            paramLabel = "L",
            converter = Arguments.LengthArgument.class,
            description = "Length of the connecting rod.")
    private Optional<Quantity> rod = Optional.empty();

    @Option(
            names = "--degrees",
            paramLabel = "A",
            converter = Arguments.AngleArgument.class,
            description = "Crank angle after top dead centre, such as 10deg.")
    private Optional<Quantity> degrees = Optional.empty();

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Leak leak = leak();
        if (output.json()) {
            output.print(json(leak));
        } else {
            output.print(words(leak, output.figures(tools)));
        }
        return Output.DONE;
    }

    /** What the reading is reduced to; the last three need more than a reading. */
    private record Leak(
            double percent,
            Optional<Double> areaSquareMetre,
            Optional<LeakTester> reference,
            Optional<Double> crankTorque) {}

    private Leak leak() {
        double around = station.map(Quantity::si).orElse(LeakTester.STANDARD_AIR);
        Optional<LeakTester> tester =
                orifice.map(diameter -> LeakTester.withRestrictor(supply.si(), diameter.si(), around));
        // the percentage does not depend on the restrictor: any will do where none is known
        double percent = tester.orElseGet(() -> LeakTester.withRestrictor(supply.si(), 1e-3, around))
                .percent(reading.si());
        Optional<Double> area = tester.map(used -> used.leakArea(reading.si())).filter(Double::isFinite);
        double boreMetre = bore.map(Quantity::si).orElse(0.0);
        return new Leak(percent, area, area.map(known -> LeakTester.reference(boreMetre, around)), torque());
    }

    private Optional<Double> torque() {
        List<Optional<Quantity>> crank = List.of(stroke, rod, degrees);
        if (crank.stream().noneMatch(Optional::isPresent)) {
            return Optional.empty();
        }
        if (Stream.concat(Stream.of(bore), crank.stream()).anyMatch(Optional::isEmpty)) {
            throw new ParameterException(
                    spec.commandLine(), "The torque on the crank needs all of --bore, --stroke, --rod and --degrees.");
        }
        CrankGeometry geometry =
                new CrankGeometry(stroke.orElseThrow().si(), rod.orElseThrow().si());
        return Optional.of(new CrankPush(geometry, bore.orElseThrow().si())
                .torque(reading.si(), degrees.orElseThrow().si()));
    }

    private static Json json(Leak leak) {
        Json json = new Json().put("leakPercent", leak.percent());
        leak.areaSquareMetre().ifPresent(area -> {
            LeakTester reference = leak.reference().orElseThrow();
            json.put("leakAreaMm2", area * 1e6)
                    .put("dischargeCoefficient", LeakTester.DISCHARGE_COEFFICIENT)
                    .put("referenceReadingKpa", reference.reading(area) / 1e3)
                    .put("referenceLeakPercent", reference.percent(reference.reading(area)))
                    .put("referenceSupplyKpa", reference.supply() / 1e3)
                    .put("referenceOrificeMm", reference.restrictorDiameter() * 1e3);
        });
        leak.crankTorque().ifPresent(torque -> json.put("crankTorqueNm", torque));
        return json;
    }

    private Table words(Leak leak, Figures figures) {
        Table table = new Table().words("leak-down").figures("");
        table.row("leakage, (supply − reading)/supply", Figures.percent(leak.percent(), 1));
        leak.areaSquareMetre().ifPresent(area -> {
            LeakTester reference = leak.reference().orElseThrow();
            double shown = reference.reading(area);
            table.row("area of the leak", Figures.number(area * 1e6, 2) + Figures.NO_BREAK_SPACE + "mm²");
            table.row(
                    "the reference tester (FAA AC 43.13-1B, " + figures.of(reference.supply(), Shown.COMPRESSION)
                            + ", restrictor "
                            + figures.of(reference.restrictorDiameter(), Shown.GAP) + ") would show",
                    figures.of(shown, Shown.COMPRESSION) + ", " + Figures.percent(reference.percent(shown), 1));
        });
        if (leak.areaSquareMetre().isEmpty()) {
            table.row("area of the leak", orifice.isEmpty() ? "needs --orifice" : "too large to tell");
        }
        leak.crankTorque()
                .ifPresent(torque ->
                        table.row("torque on the crank, friction left out", figures.of(torque, Shown.TORQUE)));
        return table;
    }
}
