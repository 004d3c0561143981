package org.pullproof.health;

import java.util.Arrays;

/** The middle of some values: unmoved by a single wild one. */
public final class Median {
    private Median() {}

    /**
     * Returns the middle value, or the mean of the two middle ones.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static double of(double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("A median needs at least one value");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
