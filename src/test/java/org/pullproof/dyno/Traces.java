package org.pullproof.dyno;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** Traces for tests: a law of power over speed, sampled. */
public final class Traces {
    private Traces() {}

    public static Trace of(double[] rpm, DoubleUnaryOperator watt) {
        return Trace.of(rpm, Arrays.stream(rpm).map(watt).toArray());
    }

    /** Every 25 rpm from one speed to another. */
    public static Trace even(int from, int to, DoubleUnaryOperator watt) {
        return of(
                IntStream.rangeClosed(0, (to - from) / 25)
                        .mapToDouble(i -> from + 25.0 * i)
                        .toArray(),
                watt);
    }

    /** 150 speeds at random steps of 1 to 40 rpm from about 2000 rpm. */
    static Trace uneven(Random random, DoubleUnaryOperator watt) {
        double[] rpm = new double[150];
        double next = 2000 + random.nextDouble();
        for (int i = 0; i < rpm.length; i++) {
            rpm[i] = next;
            next += 1 + 39 * random.nextDouble();
        }
        return of(rpm, watt);
    }
}
