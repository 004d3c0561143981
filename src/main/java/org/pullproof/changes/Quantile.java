package org.pullproof.changes;

import org.apache.commons.math3.distribution.TDistribution;

/** Quantiles of Student's t that the method uses. */
final class Quantile {
    /** Both sides of the 90 % interval leave 5 % outside. */
    private static final double ONE_SIDED = 0.95;

    /** Chance to see a gain that is there. */
    private static final double POWER = 0.80;

    private Quantile() {}

    /** t(0.95, ν). */
    static double ofInterval(double degrees) {
        return new TDistribution(degrees).inverseCumulativeProbability(ONE_SIDED);
    }

    /** t(0.80, ν). */
    static double ofPower(double degrees) {
        return new TDistribution(degrees).inverseCumulativeProbability(POWER);
    }
}
