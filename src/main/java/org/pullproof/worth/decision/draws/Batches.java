package org.pullproof.worth.decision.draws;

import java.util.Arrays;

/** Ten batches of draws, and the noise of a figure as they tell it. */
public final class Batches {
    /** How many there are. */
    public static final int COUNT = 10;

    private Batches() {}

    /** Ten, or one when nothing is drawn. */
    public static int of(int draws) {
        return draws == 1 ? 1 : COUNT;
    }

    /** The mean of each batch. */
    public static double[] means(double[] draws) {
        double[] means = new double[of(draws.length)];
        int each = draws.length / means.length;
        for (int b = 0; b < means.length; b++) {
            double sum = 0;
            for (int i = b * each; i < (b + 1) * each; i++) {
                sum += draws[i];
            }
            means[b] = sum / each;
        }
        return means;
    }

    public static double mean(double[] batches) {
        return Arrays.stream(batches).sum() / batches.length;
    }

    /** Standard error of the mean: the standard deviation (n − 1) of the batch values / √10; 0 for a single batch. */
    public static double standardError(double[] batches) {
        if (batches.length < 2) {
            return 0;
        }
        double mean = mean(batches);
        double squares =
                Arrays.stream(batches).map(x -> (x - mean) * (x - mean)).sum();
        return Math.sqrt(squares / (batches.length - 1) / batches.length);
    }
}
