package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.pullproof.dyno.Columns.Column;
import org.pullproof.dyno.PullSplitter.Stretch;
import org.pullproof.units.Dimension;
import org.pullproof.units.Figures;

/** Makes pulls of the rows that were read: power where the file has none, cut to what was pulled, rising speeds only. */
final class PullMaker {
    /** Below this share of the highest power a pull has not begun, or is over: idling and coasting (O). */
    private static final double LOADED = 0.05;

    /** A rise that reaches less than this share of the file's highest power was not under load (O). */
    private static final double LEAST_POWER = 0.25;

    private static final double OPEN_THROTTLE = 0.5;

    private final Columns columns;
    private final Optional<Drum> drum;
    private final RollLoss loss;
    private final int[] lines;
    private final Recording recording;
    private final RowProblems problems;

    PullMaker(Columns columns, Optional<Drum> drum, RollLoss loss, SampleReader.Read read) {
        this.columns = columns;
        this.drum = drum;
        this.loss = loss;
        this.lines = read.lines();
        this.recording = read.recording();
        this.problems = read.problems();
    }

    /** A pull still in the making: its rows, and where they stand in the recording. */
    private static final class Part {
        private final int[] rows;
        private final Recording recording;
        private final double peak;

        Part(int[] rows, Recording recording) {
            this.rows = rows;
            this.recording = recording;
            this.peak = recording.highest(Role.POWER).orElse(0);
        }

        int size() {
            return rows.length;
        }

        int row(int i) {
            return rows[i];
        }

        Recording recording() {
            return recording;
        }

        Part with(Recording other) {
            return new Part(rows, other);
        }

        Part cut(int from, int to) {
            return new Part(Arrays.copyOfRange(rows, from, to), recording.rows(from, to));
        }

        Part picked(int[] kept) {
            return new Part(Arrays.stream(kept).map(this::row).toArray(), recording.picked(kept));
        }

        double peak() {
            return peak;
        }
    }

    List<Trace> pulls() throws UnreadablePullException {
        if (recording.size() < 2) {
            return List.of();
        }
        List<Part> parts = new ArrayList<>();
        for (Stretch stretch : PullSplitter.split(recording)) {
            int[] rows = IntStream.range(stretch.from(), stretch.to()).toArray();
            parts.add(trimmed(withPower(inTime(new Part(rows, recording.rows(stretch.from(), stretch.to()))))));
        }
        double highest = parts.stream().mapToDouble(Part::peak).max().orElse(0);
        List<Part> loaded = parts.stream()
                .filter(part -> part.recording().size() > 1 && part.peak() >= LEAST_POWER * highest)
                .toList();
        nameLeftOut(loaded);
        List<Trace> traces = new ArrayList<>();
        for (Part part : loaded) {
            int[] rising = rising(part);
            if (rising.length > 1) {
                traces.add(Trace.of(part.recording(), rising, columns.saysCorrected()));
            }
        }
        return traces;
    }

    /** Where power comes from the roll, a row that goes back in time has no place; a clock set to nought begins anew. */
    private Part inTime(Part part) {
        if (!columns.has(Role.TIME) || columns.value().isPresent()) {
            return part;
        }
        int begins = 0;
        for (int row = 1; row < part.size(); row++) {
            begins = part.recording().at(Role.TIME, row) < part.recording().at(Role.TIME, begins) ? row : begins;
        }
        Part anew = part.cut(begins, part.size());
        int[] forward = DrumPower.forward(anew.recording().finite(Role.TIME));
        if (forward.length < anew.size()) {
            problems.add(new ImportProblem(
                    lines[anew.row(0)],
                    "time",
                    (anew.size() - forward.length)
                            + " rows of the pull that begins here go back in time and are left out."));
        }
        return anew.picked(forward);
    }

    private Part withPower(Part part) throws UnreadablePullException {
        Part turning = withRoll(part);
        Recording rows = turning.recording();
        if (columns.value().isEmpty()) {
            double[] watt = drumWatt(rows).orElse(new double[rows.size()]);
            return turning.with(rows.with(Role.POWER, watt));
        }
        Recording powered = columns.value().get() == Role.TORQUE ? rows.with(Role.POWER, fromTorque(rows)) : rows;
        return turning.with(drumWatt(powered).map(powered::withDrumPower).orElse(powered));
    }

    private static double[] fromTorque(Recording rows) {
        return IntStream.range(0, rows.size())
                .mapToDouble(row -> rows.at(Role.TORQUE, row) * Math.PI / 30 * rows.at(Role.RPM, row))
                .toArray();
    }

    /** The speed of the roll in rad/s, where that can be told. */
    private Part withRoll(Part part) throws UnreadablePullException {
        Column roll = columns.columns().get(Role.ROLL);
        if (roll == null) {
            return part;
        }
        double factor = toRadian(roll);
        double[] radian = IntStream.range(0, part.size())
                .mapToDouble(row -> part.recording().at(Role.ROLL, row) * factor)
                .toArray();
        return part.with(part.recording().with(Role.ROLL, radian));
    }

    /** A surface speed without a drum is left in m/s: only its ratio to the engine's is looked at then. */
    private double toRadian(Column roll) throws UnreadablePullException {
        if (roll.unit().dimension() != Dimension.SPEED) {
            return Math.PI / 30;
        }
        return drum.isEmpty()
                ? 1
                : 1 / RollRadius.needed(columns.headerLine(), roll.header(), drum.flatMap(Drum::radiusMetre));
    }

    /** Empty if no drum was told, or the roll's speed is blank somewhere. */
    private Optional<double[]> drumWatt(Recording rows) {
        double[] second = rows.finite(Role.TIME);
        double[] radian = rows.finite(Role.ROLL);
        boolean whole = second.length == rows.size() && radian.length == rows.size();
        boolean enough = whole
                && Arrays.stream(second).distinct().count() >= DrumPower.FEWEST
                && DrumPower.forward(second).length == second.length;
        return drum.filter(told -> enough)
                .map(told -> new DrumPower(told, loss).of(second, radian).watt());
    }

    private Part trimmed(Part part) {
        int from = 0;
        int to = part.size();
        double throttle = part.recording().highest(Role.THROTTLE).orElse(0);
        while (from < to && (idles(part, from) || closed(part, from, throttle))) {
            from++;
        }
        while (to > from && idles(part, to - 1)) {
            to--;
        }
        return part.cut(from, to);
    }

    private static boolean idles(Part part, int row) {
        return part.recording().at(Role.POWER, row) < LOADED * part.peak();
    }

    private static boolean closed(Part part, int row, double open) {
        return part.recording().at(Role.THROTTLE, row) < OPEN_THROTTLE * open;
    }

    /** The rows whose speed rises above all before; unbroken runs of the others are named once. */
    private int[] rising(Part part) {
        IntStream.Builder kept = IntStream.builder();
        List<Integer> dropped = new ArrayList<>();
        double top = 0;
        for (int row = 0; row < part.size(); row++) {
            double rpm = part.recording().at(Role.RPM, row);
            if (rpm > top) {
                nameDropped(part, dropped, top);
                kept.add(row);
                top = rpm;
            } else {
                dropped.add(row);
            }
        }
        return kept.build().toArray();
    }

    private void nameDropped(Part part, List<Integer> dropped, double top) {
        if (dropped.isEmpty()) {
            return;
        }
        int first = lines[part.row(dropped.get(0))];
        int last = lines[part.row(dropped.get(dropped.size() - 1))];
        String rows = dropped.size() == 1
                ? "the row is left out."
                : dropped.size() + " rows up to line " + last + " are left out.";
        problems.add(new ImportProblem(
                first,
                "rpm",
                "the speed does not rise above the " + Figures.number(top, 0) + " rpm before it; " + rows));
        dropped.clear();
    }

    /** Names the rows that belong to no pull, run by run. */
    private void nameLeftOut(List<Part> parts) {
        boolean[] used = new boolean[lines.length];
        parts.forEach(part -> Arrays.fill(used, part.row(0), part.row(part.size() - 1) + 1, true));
        int from = 0;
        for (int row = 1; row <= used.length; row++) {
            if (row == used.length || used[row] != used[from]) {
                if (!used[from]) {
                    nameRun(from, row);
                }
                from = row;
            }
        }
    }

    private void nameRun(int from, int to) {
        String rows = to - from == 1
                ? "the row is no part of a pull (idling, coasting or no load)"
                : (to - from) + " rows up to line " + lines[to - 1]
                        + " are no part of a pull (idling, coasting or no load)";
        problems.add(new ImportProblem(lines[from], "", rows + "; left out."));
    }
}
