package org.pullproof.dyno;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pullproof.units.Figures;

/**
 * Whether the throttle stood open over the band.
 *
 * @param limits what is borne
 */
record ThrottleRules(PullLimits limits) implements PullRule {
    @Override
    public Stream<String> flags(Judged pull, Company company) {
        double[] open = pull.rows().finite(Role.THROTTLE);
        OptionalDouble widest = company.widestOfDay(pull);
        if (open.length == 0 || widest.isEmpty() || widest.getAsDouble() <= 0) {
            return Stream.empty();
        }
        return Stream.concat(throttle(open, widest.getAsDouble()), lift(pull, widest.getAsDouble()));
    }

    private Stream<String> throttle(double[] open, double widest) {
        double least = 100 * Arrays.stream(open).min().orElseThrow() / widest;
        double fall = 100 * fall(open) / widest;
        if (least < limits.throttleShare()) {
            return Stream.of("throttle: it is open only " + Figures.percent(least, 0)
                    + " of the widest of the day at one point of the band; "
                    + Figures.percent(limits.throttleShare(), 0)
                    + " is full.");
        }
        return fall > limits.throttleFall()
                ? Stream.of("throttle: it falls by " + Figures.percent(fall, 0) + " in the band; "
                        + Figures.percent(limits.throttleFall(), 0) + " is borne.")
                : Stream.empty();
    }

    /** The deepest fall from the widest opening before it. */
    private static double fall(double[] open) {
        double top = open[0];
        double fall = 0;
        for (double each : open) {
            top = Math.max(top, each);
            fall = Math.max(fall, top - each);
        }
        return fall;
    }

    private Stream<String> lift(Judged pull, double widest) {
        Recording rows = pull.rows();
        int fastest = IntStream.range(1, rows.size())
                .filter(row -> Double.isFinite(closing(rows, row)))
                .boxed()
                .max((a, b) -> Double.compare(closing(rows, a), closing(rows, b)))
                .orElse(0);
        double rate = fastest == 0 ? 0 : 10 * closing(rows, fastest) / widest;
        double share = powerAfter(pull, fastest);
        return rate > limits.liftPercentPerTenth() && share < limits.liftPowerShare()
                ? Stream.of("lift: at " + Figures.number(rows.at(Role.RPM, fastest), 0) + " rpm the throttle closes by "
                        + Figures.percent(rate, 0) + " in 0.1" + Figures.NO_BREAK_SPACE
                        + "s and the power goes down to "
                        + Figures.percent(share, 0) + " of what it was; below "
                        + Figures.percent(limits.liftPowerShare(), 0) + " is a lift.")
                : Stream.empty();
    }

    /** How fast the throttle closes from the row before, its own figures a second; NaN where that is not logged. */
    private static double closing(Recording rows, int row) {
        double seconds = rows.at(Role.TIME, row) - rows.at(Role.TIME, row - 1);
        return seconds > 0 ? (rows.at(Role.THROTTLE, row - 1) - rows.at(Role.THROTTLE, row)) / seconds : Double.NaN;
    }

    /** The least power within so many rpm after that row, or in the last of the band, in percent of the highest up to there. */
    private double powerAfter(Judged pull, int row) {
        Recording rows = pull.rows();
        double highest =
                Arrays.stream(rows.finite(Role.POWER, 0, row + 1)).max().orElse(Double.NaN);
        double least = IntStream.range(row, rows.size())
                .filter(i -> rows.at(Role.RPM, i) <= rows.at(Role.RPM, row) + limits.liftTailRpm()
                        || rows.at(Role.RPM, i) >= pull.to() - limits.liftTailRpm())
                .mapToDouble(i -> rows.at(Role.POWER, i))
                .min()
                .orElse(Double.NaN);
        return 100 * least / highest;
    }
}
