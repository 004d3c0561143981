package org.pullproof.dyno;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Power that turns a roll faster, from its speed against time.
 *
 * <pre>  P = I · ω · dω/dt + P_loss(ω)</pre>
 *
 * <p>The slope is that of the local polynomial of degree 2 over {@link #WIDTH_SECOND}, or over {@link #FEWEST} samples where they
 * stand wider. Source: definition of kinetic energy (P); 40 CFR 1066.250 and 1066.260 have worked examples, see
 * {@code DrumPowerTest}. The width is judgement (C): wide enough for a speed logged in steps of 0.1 km/h at 20 Hz.
 */
final class DrumPower {
    static final double WIDTH_SECOND = 0.3;

    static final int FEWEST = 5;

    private final LocalPolynomial polynomial = new LocalPolynomial(2);
    private final Drum drum;
    private final RollLoss loss;

    DrumPower(Drum drum, RollLoss loss) {
        this.drum = drum;
        this.loss = loss;
    }

    /** Power at each sample, and how well it is known. */
    static final class Result {
        private final double[] watt;
        private final double[] error;

        private Result(double[] watt, double[] error) {
            this.watt = watt;
            this.error = error;
        }

        /** Power at each sample, W. */
        double[] watt() {
            return watt.clone();
        }

        /** Its standard error in W, from the inertia's and the loss's uncertainty and the scatter of the speed. */
        double[] error() {
            return error.clone();
        }
    }

    /**
     * @param second times, not falling
     * @param radian speed of the roll at each, rad/s
     * @throws IllegalArgumentException if there are fewer than {@link #FEWEST} samples or they stand at fewer than three times
     */
    Result of(double[] second, double[] radian) {
        if (second.length < FEWEST) {
            throw new IllegalArgumentException("Power from a roll needs " + FEWEST + " samples, was " + second.length);
        }
        double[] watt = new double[second.length];
        double[] error = new double[second.length];
        for (int i = 0; i < second.length; i++) {
            LocalPolynomial.Fit fit = fit(second, radian, i);
            double turning = drum.kgM2() * fit.value() * fit.slope();
            watt[i] = turning + loss.watt(fit.value());
            double slope = drum.kgM2() * fit.value() * fit.slopeError();
            error[i] = Math.sqrt(
                    Math.pow(turning * drum.share(), 2) + slope * slope + Math.pow(loss.errorWatt(fit.value()), 2));
        }
        return new Result(watt, error);
    }

    private LocalPolynomial.Fit fit(double[] second, double[] radian, int i) {
        int from = i;
        int to = i + 1;
        while (from > 0 && second[i] - second[from - 1] <= WIDTH_SECOND / 2 + 1e-9) {
            from--;
        }
        while (to < second.length && second[to] - second[i] <= WIDTH_SECOND / 2 + 1e-9) {
            to++;
        }
        while (to - from < FEWEST || distinct(second, from, to) < 3) {
            boolean before =
                    from > 0 && (to == second.length || second[i] - second[from - 1] <= second[to] - second[i]);
            if (!before && to == second.length) {
                throw new IllegalArgumentException("The samples stand at fewer than three times");
            }
            from -= before ? 1 : 0;
            to += before ? 0 : 1;
        }
        return polynomial.at(second, radian, from, to, second[i]);
    }

    private static long distinct(double[] second, int from, int to) {
        return Arrays.stream(second, from, to).distinct().count();
    }

    /** Where each time is at least the one before: rows that go back in time are left out. */
    static int[] forward(double[] second) {
        double[] latest = {Double.NEGATIVE_INFINITY};
        return IntStream.range(0, second.length)
                .filter(i -> {
                    boolean on = second[i] >= latest[0];
                    latest[0] = on ? second[i] : latest[0];
                    return on;
                })
                .toArray();
    }
}
