package org.pullproof.dyno;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.pullproof.units.RpmRange;

/**
 * What was logged, row by row in the order of the file: one list of figures a role, all of one length, in SI. A cell that was
 * blank is {@link Double#NaN} here; every reader has to mind it. The speed of the roll is in rad/s, or in m/s where no radius was
 * told. A part of a recording shares the figures of the whole. Immutable.
 */
public final class Recording {
    private final Map<Role, Column> columns;
    private final double[] drumWatt;
    private final int size;

    private Recording(Map<Role, Column> columns, double[] drumWatt, int size) {
        this.columns = columns;
        this.drumWatt = drumWatt;
        this.size = size;
    }

    /** Figures of one role from a row on; the rows before belong to another part of the file. */
    private static final class Column {
        private final double[] figures;
        private final int from;

        Column(double[] figures, int from) {
            this.figures = figures;
            this.from = from;
        }

        double at(int row) {
            return figures[from + row];
        }

        Column later(int rows) {
            return new Column(figures, from + rows);
        }

        double[] picked(int[] rows) {
            double[] picked = new double[rows.length];
            for (int i = 0; i < rows.length; i++) {
                picked[i] = at(rows[i]);
            }
            return picked;
        }
    }

    /**
     * @param columns at least one, all of one length
     */
    static Recording of(Map<Role, double[]> columns) {
        Map<Role, double[]> own = new EnumMap<>(Role.class);
        columns.forEach((role, figures) -> own.put(role, figures.clone()));
        return owning(own);
    }

    /**
     * The same of lists that are this recording's from now on: a file may fill the memory once, not twice.
     *
     * @param columns at least one, all of one length
     */
    static Recording owning(Map<Role, double[]> columns) {
        if (columns.values().stream()
                        .mapToInt(figures -> figures.length)
                        .distinct()
                        .count()
                != 1) {
            throw new IllegalArgumentException("The columns of a recording have one length");
        }
        Map<Role, Column> own = new EnumMap<>(Role.class);
        columns.forEach((role, figures) -> own.put(role, new Column(figures, 0)));
        return new Recording(own, new double[0], columns.values().iterator().next().length);
    }

    public int size() {
        return size;
    }

    /** Whether there is such a column with at least one figure. */
    public boolean logs(Role role) {
        return columns.containsKey(role) && highest(role).isPresent();
    }

    /** The figure of a row, NaN where it is blank or there is no such column. */
    public double at(Role role, int row) {
        Column column = columns.get(role);
        return column == null ? Double.NaN : column.at(row);
    }

    /** The figures there are of a role, blank rows left out. */
    double[] finite(Role role) {
        return finite(role, 0, size);
    }

    double[] finite(Role role, int from, int to) {
        double[] there = new double[to - from];
        int count = 0;
        for (int row = from; row < to; row++) {
            double figure = at(role, row);
            if (Double.isFinite(figure)) {
                there[count++] = figure;
            }
        }
        return count == there.length ? there : Arrays.copyOf(there, count);
    }

    /** The highest figure of a role; empty if it has none. */
    OptionalDouble highest(Role role) {
        double highest = Double.NaN;
        for (int row = 0; row < size; row++) {
            double figure = at(role, row);
            if (Double.isFinite(figure) && !(figure <= highest)) {
                highest = figure;
            }
        }
        return Double.isNaN(highest) ? OptionalDouble.empty() : OptionalDouble.of(highest);
    }

    /** The rows from one to before another. */
    Recording rows(int from, int to) {
        Map<Role, Column> part = new EnumMap<>(Role.class);
        columns.forEach((role, column) -> part.put(role, column.later(from)));
        return new Recording(part, knowsDrumPower() ? Arrays.copyOfRange(drumWatt, from, to) : drumWatt, to - from);
    }

    Recording picked(int[] rows) {
        Map<Role, Column> picked = new EnumMap<>(Role.class);
        columns.forEach((role, column) -> picked.put(role, new Column(column.picked(rows), 0)));
        return new Recording(picked, knowsDrumPower() ? new Column(drumWatt, 0).picked(rows) : drumWatt, rows.length);
    }

    /** The figures of a role that is logged, in the given rows. */
    double[] picked(Role role, int[] rows) {
        return Objects.requireNonNull(columns.get(role)).picked(rows);
    }

    /** The same with one column more, or another in its place. */
    Recording with(Role role, double[] figures) {
        Map<Role, Column> more = new EnumMap<>(columns);
        more.put(role, new Column(figures.clone(), 0));
        return new Recording(more, drumWatt, size);
    }

    /** The same with the power that the roll's own speed tells, W. */
    Recording withDrumPower(double[] watt) {
        return new Recording(columns, watt.clone(), size);
    }

    boolean knowsDrumPower() {
        return drumWatt.length > 0;
    }

    /** Power in W that the roll's own speed tells; NaN if it is not known. */
    double drumWatt(int row) {
        return knowsDrumPower() ? drumWatt[row] : Double.NaN;
    }

    /** The rows whose speed lies in the band, in order. */
    Recording in(RpmRange band) {
        return picked(IntStream.range(0, size)
                .filter(row -> at(Role.RPM, row) >= band.fromRpm() && at(Role.RPM, row) <= band.toRpm())
                .toArray());
    }
}
