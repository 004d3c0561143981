package org.pullproof.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.pullproof.app.Toolbox;
import org.pullproof.cli.Arguments.ColumnArgument;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.Drag;
import org.pullproof.dyno.Drum;
import org.pullproof.dyno.DrumRun;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.session.Problem;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells the power that turns an inertia drum. */
@Command(
        name = "drum",
        description = "Tells power against speed from the speed of an inertia drum against time.",
        footer = {
            "",
            "Without --coast-down what bearings and air take from the roll is not counted, and power reads low by it.",
            "",
            "Example: pullproof drum run.csv --inertia 34kgm2 --inertia-within 1%% --coast-down empty-roll.csv"
        })
final class DrumCommand implements Callable<Integer> {
    private static final int PRINTED_EVERY = 100;

    private final Toolbox tools;

    @Parameters(
            index = "0",
            paramLabel = "CSV",
            description = "The run: time and roll speed, engine speed if there is.")
    private Path file;

    @Mixin
    private DrumTyped drum;

    @Option(
            names = "--coast-down",
            paramLabel = "CSV",
            description = "The roll running down by itself, no car on it: its losses are added.")
    private Optional<Path> coastDown = Optional.empty();

    @Option(
            names = "--column",
            paramLabel = "ROLE=HEADER[:UNIT]",
            converter = ColumnArgument.class,
            description = "Which column is time, roll or rpm, such as roll=Channel 2:km/h; repeatable.")
    private List<ColumnChoice> columns = List.of();

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    DrumCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        Drum told = drum.drum()
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(), "The drum's inertia is needed, such as --inertia 34kgm2."));
        DrumRun run = tools.readRoll().run(file, coastDown, told, columns);
        output.complain(run.problems().stream()
                .map(problem -> new Problem(file.toString(), "line " + problem.line(), problem.message()))
                .toList());
        if (output.json()) {
            output.print(json(run, told));
        } else {
            print(run, told, output.figures(tools));
        }
        return Output.DONE;
    }

    private static Json json(DrumRun run, Drum drum) {
        PowerCurve curve = PowerCurve.from(run.trace());
        Json json = new Json()
                .put("inertiaKgM2", drum.kgM2())
                .put("inertiaUncertaintyPercent", 100 * drum.share())
                .put("speedOf", run.byRollSpeed() ? "roll" : "engine")
                .put("samples", run.trace().size())
                .put("lossesCounted", run.loss().isPresent());
        run.loss().ifPresent(loss -> json.put("rollLoss", rollLoss(loss)));
        return json.put("smoothingRpm", PowerCurve.SMOOTHING)
                .put(
                        "curve",
                        IntStream.range(0, curve.size())
                                .mapToObj(i -> new Json()
                                        .put("rpm", curve.rpm(i))
                                        .put("powerKw", curve.watt(i) / 1e3)
                                        .put("powerUncertaintyKw", error(run, curve.rpm(i)) / 1e3)
                                        .put("torqueNm", curve.newtonMetre(i)))
                                .toList());
    }

    private static Json rollLoss(Drag loss) {
        return new Json()
                .put("aNm", loss.a())
                .put("bNms", loss.b())
                .put("cNms2", loss.c())
                .put("aErrorNm", loss.error(0))
                .put("bErrorNms", loss.error(1))
                .put("cErrorNms2", loss.error(2))
                .put("fromRadS", loss.slowest())
                .put("toRadS", loss.fastest());
    }

    /** Standard error at a speed, that of the nearest sample. */
    private static double error(DrumRun run, double rpm) {
        int nearest = IntStream.range(0, run.trace().size())
                .reduce(0, (a, b) -> distance(run, b, rpm) < distance(run, a, rpm) ? b : a);
        return run.error().get(nearest);
    }

    private static double distance(DrumRun run, int sample, double rpm) {
        return Math.abs(run.trace().rpm(sample) - rpm);
    }

    private void print(DrumRun run, Drum drum, Figures figures) {
        output.print(sentences(run, drum));
        output.print("");
        Table table = new Table()
                .figures(run.byRollSpeed() ? "roll, rpm" : "rpm")
                .figures("power")
                .figures("±")
                .figures("torque");
        PowerCurve curve = PowerCurve.from(run.trace());
        IntStream.range(0, curve.size())
                .filter(i -> curve.rpm(i) % PRINTED_EVERY == 0)
                .forEach(i -> table.row(
                        figures.bare(curve.rpm(i), Shown.SPEED),
                        figures.of(curve.watt(i), Shown.POWER),
                        figures.of(error(run, curve.rpm(i)), Shown.POWER),
                        figures.of(curve.newtonMetre(i), Shown.TORQUE)));
        output.print(table);
    }

    private static List<String> sentences(DrumRun run, Drum drum) {
        List<String> lines = new ArrayList<>();
        lines.add("Power at the roll, as measured, smoothed over " + PowerCurve.SMOOTHING
                + " rpm; ± is one standard error,"
                + " with the inertia of " + drum.inertia() + " known within "
                + Figures.percent(100 * drum.share(), 1) + ".");
        lines.add(run.loss()
                .map(loss -> "What bearings and air take from the roll is added, as its own coast-down from "
                        + Figures.number(loss.fastest(), 1) + " to " + Figures.number(loss.slowest(), 1)
                        + " rad/s tells.")
                .orElse(
                        "What bearings and air take from the roll is not counted, for there is no coast-down of it: power reads"
                                + " low by that."));
        if (run.byRollSpeed()) {
            lines.add("The file has no engine speed: speed and torque are those of the roll.");
        }
        return lines;
    }
}
