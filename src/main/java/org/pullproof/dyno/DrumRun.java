package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.pullproof.units.Figures;

/**
 * A run on an inertia drum: power from the roll's speed against time alone, whatever else the file holds.
 *
 * @param trace power against speed
 * @param error standard error of the power at each sample, W
 * @param byRollSpeed whether the speed is that of the roll, for the file has none of the engine
 * @param loss what bearings and air take from the roll, where its own coast-down told
 * @param problems what was left out and what is to be minded
 */
public record DrumRun(
        Trace trace, List<Double> error, boolean byRollSpeed, Optional<Drag> loss, List<ImportProblem> problems) {
    public DrumRun {
        error = List.copyOf(error);
        problems = List.copyOf(problems);
    }

    /**
     * @param rows of the run
     * @param choices what a person said of its columns
     * @param drum the roll
     * @param loss from the roll's own coast-down, if there was one
     * @throws UnreadablePullException if the table lacks time or roll speed, or no speed rises in it
     */
    public static DrumRun read(List<TableRow> rows, List<ColumnChoice> choices, Drum drum, Optional<Drag> loss)
            throws UnreadablePullException {
        Columns columns = ColumnFinder.find(rows, choices, Need.ROLL);
        SampleReader.Read read = withSpeed(RollRows.read(rows, columns), columns);
        RollLoss taken = loss.map(RollLoss.class::cast).orElse(RollLoss.NOT_MEASURED);
        List<Trace> pulls = new PullMaker(columns, Optional.of(drum), taken, read).pulls();
        if (pulls.size() != 1) {
            throw new UnreadablePullException(
                    columns.headerLine(),
                    pulls.isEmpty()
                            ? "below the header the roll does not gain speed."
                            : "the file holds " + pulls.size() + " runs; give one.");
        }
        List<ImportProblem> all = new ArrayList<>(columns.doubts());
        all.addAll(read.problems().all());
        Trace trace = pulls.get(0);
        loss.flatMap(told -> beyond(trace, told, columns.headerLine())).ifPresent(all::add);
        return new DrumRun(trace, errors(trace, new DrumPower(drum, taken)), !columns.has(Role.RPM), loss, all);
    }

    /** The speed of the roll stands in for the engine's where that is not logged. */
    private static SampleReader.Read withSpeed(SampleReader.Read read, Columns columns) {
        if (columns.has(Role.RPM)) {
            return read;
        }
        double[] roll = read.recording().finite(Role.ROLL);
        return read.with(Role.RPM, roll);
    }

    private static List<Double> errors(Trace trace, DrumPower power) {
        Recording rows = trace.recording();
        double[] error =
                power.of(rows.finite(Role.TIME), rows.finite(Role.ROLL)).error();
        Map<Double, Double> bySpeed = new HashMap<>();
        IntStream.range(0, rows.size()).forEach(row -> bySpeed.putIfAbsent(rows.at(Role.RPM, row), error[row]));
        return IntStream.range(0, trace.size())
                .mapToObj(i -> bySpeed.getOrDefault(trace.rpm(i), 0.0))
                .toList();
    }

    private static Optional<ImportProblem> beyond(Trace trace, Drag loss, int line) {
        double fastest =
                Arrays.stream(trace.recording().finite(Role.ROLL)).max().orElse(0);
        return fastest <= 1.02 * loss.fastest()
                ? Optional.empty()
                : Optional.of(new ImportProblem(
                        line,
                        "",
                        "the coast-down begins at " + Figures.number(loss.fastest(), 1) + " rad/s and the run reaches "
                                + Figures.number(fastest, 1)
                                + " rad/s: above it the loss is carried on by its formula."));
    }
}
