package org.pullproof.drawing;

import java.util.List;
import java.util.stream.LongStream;

/**
 * Round figures along an axis: multiples of 1, 2 or 5 times a power of ten.
 *
 * @param step distance of two ticks, greater than zero
 * @param first multiple of the step of the first tick
 * @param last multiple of the step of the last tick
 */
public record Ticks(double step, long first, long last) {
    private static final double[] ROUND = {1, 2, 5, 10};
    private static final double SLACK = 1e-9;

    /** Ticks that enclose both ends: the first not above {@code low}, the last not below {@code high}. */
    public static Ticks covering(double low, double high, int most) {
        double step = step(low, high, most);
        while (count(outer(low, high, step)) > most) {
            step = next(step);
        }
        return outer(low, high, step);
    }

    /** Ticks that lie between both ends. */
    public static Ticks inside(double low, double high, int most) {
        double step = step(low, high, most);
        while (count(inner(low, high, step)) > most) {
            step = next(step);
        }
        return inner(low, high, step);
    }

    private static Ticks outer(double low, double high, double step) {
        long first = (long) Math.floor(low / step + SLACK);
        return new Ticks(step, first, Math.max(first + 1, (long) Math.ceil(high / step - SLACK)));
    }

    private static Ticks inner(double low, double high, double step) {
        return new Ticks(step, (long) Math.ceil(low / step - SLACK), (long) Math.floor(high / step + SLACK));
    }

    /** The smallest round step of which not more than {@code most} intervals are needed. */
    private static double step(double low, double high, int most) {
        if (!(high >= low) || most < 2) {
            throw new IllegalArgumentException(
                    "Ticks go from low to high and are at least two, was " + low + " to " + high + ", " + most);
        }
        double span = high > low ? high - low : Math.max(1, Math.abs(low));
        double power = Math.pow(10, Math.floor(Math.log10(span / most)));
        double step = power;
        while (span / step > most) {
            step = next(step);
        }
        return step;
    }

    private static double next(double step) {
        double power = Math.pow(10, Math.floor(Math.log10(step) + SLACK));
        double digit = step / power;
        for (double round : ROUND) {
            if (round > digit + SLACK) {
                return round * power;
            }
        }
        return 20 * power;
    }

    private static long count(Ticks ticks) {
        return ticks.last - ticks.first + 1;
    }

    public List<Double> values() {
        return LongStream.rangeClosed(first, last).mapToObj(i -> i * step).toList();
    }

    public double low() {
        return first * step;
    }

    public double high() {
        return last * step;
    }

    /** Decimals that tell the ticks apart. */
    public int decimals() {
        return Math.max(0, (int) Math.ceil(-Math.log10(step) - SLACK));
    }
}
