package org.pullproof.health.faults;

/**
 * A spread of a size by factors.
 *
 * @param median its middle, greater than zero
 * @param sd standard deviation of its logarithm, greater than zero
 */
public record LogNormal(double median, double sd) {
    /** Weights ∝ exp(−(ln x/median)²/2sd²) at the given places, made to sum 1. */
    double[] weights(double[] places) {
        double[] weights = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            double d = Math.log(places[i] / median) / sd;
            weights[i] = Math.exp(-d * d / 2);
        }
        return Chance.madeToSumOne(weights);
    }
}
