package org.pullproof.dyno;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.pullproof.units.Dimension;

/** Reads what turns or rolls against time: for a run on the drum, or a coast-down of the roll or of the car. */
public final class RollRows {
    private static final double NEARLY_STILL = 0.05;

    private RollRows() {}

    static SampleReader.Read read(List<TableRow> rows, Columns columns) {
        return SampleReader.read(TableRows.of(rows), rows, columns);
    }

    /**
     * The loss of a roll, from its own coast-down.
     *
     * @param rows with time and the roll's speed
     * @throws UnreadablePullException if they do not tell it
     */
    public static Drag rollLoss(List<TableRow> rows, List<ColumnChoice> choices, Drum drum)
            throws UnreadablePullException {
        return drag(rows, choices, drum.kgM2(), Dimension.ROTATION, drum.radiusMetre());
    }

    /**
     * What slows a car down, from its coast-down on the road.
     *
     * @param rows with time and the car's speed
     * @param mass in kg, with what its turning parts add to it
     * @throws UnreadablePullException if they do not tell it
     */
    public static Drag carDrag(List<TableRow> rows, List<ColumnChoice> choices, double mass)
            throws UnreadablePullException {
        return drag(rows, choices, mass, Dimension.SPEED, Optional.empty());
    }

    private static Drag drag(
            List<TableRow> rows, List<ColumnChoice> choices, double mass, Dimension wanted, Optional<Double> radius)
            throws UnreadablePullException {
        Columns columns = ColumnFinder.find(
                rows,
                choices.stream()
                        .filter(choice -> choice.role() == Role.TIME || choice.role() == Role.ROLL)
                        .toList(),
                Need.ROLL);
        Recording read = read(rows, columns).recording();
        double[] second = read.finite(Role.TIME);
        double[] speed = read.finite(Role.ROLL);
        double factor = factor(columns, wanted, radius);
        int from = fastest(speed);
        int to = from;
        while (to < speed.length && speed[to] > NEARLY_STILL * speed[from] && forward(second, to, from)) {
            to++;
        }
        try {
            return CoastDown.fit(
                    mass,
                    Arrays.copyOfRange(second, from, to),
                    Arrays.stream(speed, from, to).map(each -> each * factor).toArray());
        } catch (IllegalArgumentException notTold) {
            throw new UnreadablePullException(columns.headerLine(), String.valueOf(notTold.getMessage()));
        }
    }

    private static boolean forward(double[] second, int to, int from) {
        return to == from || second[to] > second[to - 1];
    }

    private static int fastest(double[] speed) {
        int fastest = 0;
        for (int i = 1; i < speed.length; i++) {
            fastest = speed[i] >= speed[fastest] ? i : fastest;
        }
        return fastest;
    }

    /** From what the file has to rad/s for a roll, to m/s for a car. */
    private static double factor(Columns columns, Dimension wanted, Optional<Double> radius)
            throws UnreadablePullException {
        Columns.Column roll = Objects.requireNonNull(columns.columns().get(Role.ROLL));
        boolean turns = roll.unit().dimension() == Dimension.ROTATION;
        if (wanted == Dimension.SPEED && turns) {
            throw new UnreadablePullException(
                    columns.headerLine(),
                    "the column \"" + roll.header()
                            + "\" is a speed of rotation; the speed of the car is wanted, in km/h or mph.");
        }
        if (wanted == Dimension.SPEED) {
            return 1;
        }
        return turns ? Math.PI / 30 : 1 / RollRadius.needed(columns.headerLine(), roll.header(), radius);
    }
}
