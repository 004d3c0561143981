package org.pullproof.dyno;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.pullproof.dyno.DynoAssessor.Made;
import org.pullproof.units.RpmRange;

/**
 * A pull that is looked at for flags.
 *
 * @param made the pull with its figures
 * @param name setup and number
 * @param rows what was logged in the band, in the order of the file; of the whole pull where there is no band
 * @param from lower end of that, rpm
 * @param to upper end, rpm
 */
record Judged(Made made, String name, Recording rows, double from, double to) {
    static Judged of(Made made, String name, Optional<RpmRange> band) {
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
        return new Judged(made, name, all.picked(inside), from, to);
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
        return Arrays.stream(rows.finite(role)).average().orElse(Double.NaN);
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
