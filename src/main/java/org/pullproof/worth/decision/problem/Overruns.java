package org.pullproof.worth.decision.problem;

/**
 * The overruns of one car (judgement).
 *
 * @param repair of a quote for a repair
 * @param rebuild of a quote for a rebuild
 * @param hours of own hours
 * @param shared c, the share of the variance that all lines of a car have in common, 0 to 1: it fights back or it does not
 */
public record Overruns(OverrunFactor repair, OverrunFactor rebuild, OverrunFactor hours, double shared) {
    /** Median and P90 by the method (worth.md 1). */
    public static final Overruns USUAL =
            new Overruns(new OverrunFactor(1.15, 1.5), new OverrunFactor(1.25, 1.9), new OverrunFactor(1.6, 2.6), 0.5);

    public Overruns {
        Check.chance("The shared part of overruns", shared);
    }
}
