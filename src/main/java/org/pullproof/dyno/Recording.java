package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.pullproof.units.RpmRange;

/**
 * What was logged, row by row in the order of the file: one list of figures a role, all of one length, in SI. A cell that was
 * blank is {@link Double#NaN} here; every reader has to mind it. The speed of the roll is in rad/s, or in m/s where no radius was
 * told. Immutable.
 */
public final class Recording {
    private final Map<Role, double[]> columns;
    private final double[] drumWatt;
    private final int size;

    private Recording(Map<Role, double[]> columns, double[] drumWatt) {
        this.columns = columns;
        this.drumWatt = drumWatt;
        this.size = columns.values().iterator().next().length;
    }

    /**
     * @param columns at least one, all of one length
     */
    static Recording of(Map<Role, double[]> columns) {
        Map<Role, double[]> own = new EnumMap<>(Role.class);
        columns.forEach((role, figures) -> own.put(role, figures.clone()));
        if (own.values().stream().mapToInt(figures -> figures.length).distinct().count() != 1) {
            throw new IllegalArgumentException("The columns of a recording have one length");
        }
        return new Recording(own, new double[0]);
    }

    public int size() {
        return size;
    }

    /** Whether there is such a column with at least one figure. */
    public boolean logs(Role role) {
        return columns.containsKey(role) && finite(role).length > 0;
    }

    /** The figure of a row, NaN where it is blank or there is no such column. */
    public double at(Role role, int row) {
        double[] column = columns.get(role);
        return column == null ? Double.NaN : column[row];
    }

    /** The figures there are of a role, blank rows left out. */
    double[] finite(Role role) {
        return finite(role, 0, size);
    }

    double[] finite(Role role, int from, int to) {
        List<Double> there = new ArrayList<>();
        for (int row = from; row < to; row++) {
            if (Double.isFinite(at(role, row))) {
                there.add(at(role, row));
            }
        }
        return there.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The rows from one to before another. */
    Recording rows(int from, int to) {
        return picked(IntStream.range(from, to).toArray());
    }

    Recording picked(int[] rows) {
        Map<Role, double[]> picked = new EnumMap<>(Role.class);
        columns.forEach((role, figures) -> picked.put(role, picked(figures, rows)));
        return new Recording(picked, knowsDrumPower() ? picked(drumWatt, rows) : drumWatt);
    }

    private static double[] picked(double[] figures, int[] rows) {
        return Arrays.stream(rows).mapToDouble(row -> figures[row]).toArray();
    }

    /** The same with one column more, or another in its place. */
    Recording with(Role role, double[] figures) {
        Map<Role, double[]> more = new EnumMap<>(columns);
        more.put(role, figures.clone());
        return new Recording(more, drumWatt);
    }

    /** The same with the power that the roll's own speed tells, W. */
    Recording withDrumPower(double[] watt) {
        return new Recording(columns, watt.clone());
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
