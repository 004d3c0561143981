package org.pullproof.dyno;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.pullproof.dyno.DynoAssessor.Made;
import org.pullproof.units.RpmRange;

/** A pull that is looked at for flags: what was logged of it in the band, or in the whole pull where there is no band. */
final class Judged {
    private final int place;
    private final Made made;
    private final String name;
    private final Recording rows;
    private final double from;
    private final double to;
    private final Map<Role, Double> means = new EnumMap<>(Role.class);
    private Optional<GridPower> power = Optional.empty();

    private Judged(int place, Made made, String name, Recording rows, double from, double to) {
        this.place = place;
        this.made = made;
        this.name = name;
        this.rows = rows;
        this.from = from;
        this.to = to;
    }

    /**
     * @param place among all pulls, from 0
     */
    static Judged of(int place, Made made, String name, Optional<RpmRange> band) {
        Recording all = made.trace().recording();
        double from = band.map(RpmRange::fromRpm)
                .map(Integer::doubleValue)
                .orElse(made.trace().firstRpm());
        double to = band.map(RpmRange::toRpm)
                .map(Integer::doubleValue)
                .orElse(made.trace().lastRpm());
        int[] inside = IntStream.range(0, all.size())
                .filter(row -> all.at(Role.RPM, row) >= from && all.at(Role.RPM, row) <= to)
                .toArray();
        return new Judged(place, made, name, all.picked(inside), from, to);
    }

    int place() {
        return place;
    }

    Made made() {
        return made;
    }

    String name() {
        return name;
    }

    /** What was logged in the band, in the order of the file. */
    Recording rows() {
        return rows;
    }

    /** Lower end of the band, or of the pull where there is none, rpm. */
    double from() {
        return from;
    }

    /** Upper end, rpm. */
    double to() {
        return to;
    }

    /** Its power on the grid, made when it is first asked for. */
    GridPower power() {
        if (power.isEmpty()) {
            power = Optional.of(GridPower.of(trace()));
        }
        return power.get();
    }

    Trace trace() {
        return made.trace();
    }

    Pull pull() {
        return made.pull();
    }

    boolean counted() {
        return pull().excluded().isEmpty();
    }

    /** The first figure logged in the pull, NaN if there is none. */
    double first(Role role) {
        double[] figures = trace().recording().finite(role);
        return figures.length == 0 ? Double.NaN : figures[0];
    }

    /** Mean over the rows in the band, NaN if there is none. */
    double mean(Role role) {
        return means.computeIfAbsent(
                role, wanted -> Arrays.stream(rows.finite(wanted)).average().orElse(Double.NaN));
    }

    /** How fast the speed rises over the band, rpm/s; NaN without times. */
    double sweepRate() {
        int last = rows.size() - 1;
        if (last < 1) {
            return Double.NaN;
        }
        double seconds = rows.at(Role.TIME, last) - rows.at(Role.TIME, 0);
        return seconds > 0 ? (rows.at(Role.RPM, last) - rows.at(Role.RPM, 0)) / seconds : Double.NaN;
    }
}
