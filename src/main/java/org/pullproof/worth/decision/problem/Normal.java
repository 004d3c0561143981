package org.pullproof.worth.decision.problem;

/**
 * A normal distribution of a gain.
 *
 * @param mean in percent of band power
 * @param sd standard deviation, percent, not negative; 0 for a gain that is known
 */
public record Normal(double mean, double sd) {
    /** Nothing comes back, for certain. */
    public static final Normal NOTHING = new Normal(0, 0);

    public Normal {
        Check.finite("The mean of a gain", mean);
        Check.notNegative("The sd of a gain", sd);
    }
}
