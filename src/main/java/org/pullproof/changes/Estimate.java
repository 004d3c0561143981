package org.pullproof.changes;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * A difference of two settings with its uncertainty, in units of y = 100·ln(power).
 *
 * @param difference newer less older
 * @param standardError its standard error
 * @param degrees degrees of freedom of Student's t
 */
record Estimate(double difference, double standardError, double degrees) {
    double halfWidth() {
        return Quantile.ofInterval(degrees) * standardError;
    }

    double low() {
        return difference - halfWidth();
    }

    double high() {
        return difference + halfWidth();
    }

    /** Two-sided p = 2·P(T &gt; |difference| / se). */
    double twoSidedP() {
        return 2 * new TDistribution(degrees).cumulativeProbability(-Math.abs(difference) / standardError);
    }

    /** A difference of y as percent of power: 100·(e^(y/100) − 1). */
    static double percent(double y) {
        return 100 * Math.expm1(y / 100);
    }
}
