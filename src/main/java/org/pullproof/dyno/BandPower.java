package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.units.RpmRange;

/** Mean power over a band of engine speeds: the figure that changes are judged on. */
public final class BandPower {
    private BandPower() {}

    /**
     * Returns the mean of power over the band in kW, from the samples as measured, without smoothing.
     *
     * <pre>  (1/(n2 − n1)) ∫ P dn,   P straight between the samples (trapezoids), also at the ends of the band</pre>
     *
     * @return empty if the samples do not reach over the whole band
     */
    public static OptionalDouble of(Trace trace, RpmRange band) {
        if (!trace.covers(band)) {
            return OptionalDouble.empty();
        }
        double rpm = band.fromRpm();
        double watt = trace.wattAt(rpm);
        double area = 0;
        for (int i = trace.indexFrom(Math.nextUp(rpm)); i < trace.size() && trace.rpm(i) < band.toRpm(); i++) {
            area += (trace.rpm(i) - rpm) * (trace.watt(i) + watt) / 2;
            rpm = trace.rpm(i);
            watt = trace.watt(i);
        }
        area += (band.toRpm() - rpm) * (trace.wattAt(band.toRpm()) + watt) / 2;
        return OptionalDouble.of(area / (band.toRpm() - band.fromRpm()) / 1e3);
    }

    /** The widest band that all traces reach over; empty if there are none, or it would be narrower than a band may be. */
    static Optional<RpmRange> commonTo(List<Trace> traces) {
        if (traces.isEmpty()) {
            return Optional.empty();
        }
        int from = (int)
                Math.ceil(traces.stream().mapToDouble(Trace::firstRpm).max().orElseThrow());
        int to = (int)
                Math.floor(traces.stream().mapToDouble(Trace::lastRpm).min().orElseThrow());
        return RpmRange.possible(from, to) ? Optional.of(new RpmRange(from, to)) : Optional.empty();
    }
}
