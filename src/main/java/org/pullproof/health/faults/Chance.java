package org.pullproof.health.faults;

import org.apache.commons.math3.special.Erf;

/** Densities and small sums. */
final class Chance {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    /** Beyond this many standard deviations the density is nothing beside a blunder's. */
    private static final double FAR = 9;

    private Chance() {}

    /** N(d; s), normal density. */
    static double normal(double d, double s) {
        double z = d / s;
        return Math.abs(z) > FAR ? 0 : Math.exp(-z * z / 2) / (s * ROOT_TWO_PI);
    }

    /** Φ(z), chance that a standard normal lies below. */
    static double below(double z) {
        return Math.abs(z) > FAR ? (z > 0 ? 1 : 0) : (1 + Erf.erf(z / Math.sqrt(2))) / 2;
    }

    static double[] madeToSumOne(double[] weights) {
        double sum = sum(weights);
        double[] shares = new double[weights.length];
        for (int i = 0; i < weights.length; i++) {
            shares[i] = weights[i] / sum;
        }
        return shares;
    }

    static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Weights of a standard normal at the given deviations, made to sum 1. */
    static double[] normalWeights(double[] deviations) {
        double[] weights = new double[deviations.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.exp(-deviations[i] * deviations[i] / 2);
        }
        return madeToSumOne(weights);
    }
}
