package org.pullproof.changes;

/**
 * What is assumed of a dyno until the pulls say otherwise (power-change method, section 2; a choice of this project made
 * on simulated pulls).
 *
 * @param scatter s0, pull-to-pull scatter in percent
 * @param weight ν0, how many pulls of evidence that assumption is worth
 * @param drift κ, weight of "no steady drift": ± s/√κ a pull is typical; 0 for no assumption
 * @param wander ω, random walk from pull to pull, in units of the scatter
 * @param block b, shift of a whole run of pulls on one setup, in units of the scatter
 * @param dayLevel standard deviation of one day's level in percent
 */
record Prior(double scatter, double weight, double drift, double wander, double block, double dayLevel) {
    /** The constants of this project. */
    static final Prior OF_THIS_PROJECT = new Prior(0.6, 4, 6, 0.3, 0.4, 1.2);

    /** Ordinary least squares: nothing assumed, independent pulls. */
    static final Prior NONE = new Prior(0, 0, 0, 0, 0, 1.2);

    /** The same with another scatter, worth so many pulls of evidence. */
    Prior withScatter(double percent, double pulls) {
        return new Prior(percent, pulls, drift, wander, block, dayLevel);
    }
}
