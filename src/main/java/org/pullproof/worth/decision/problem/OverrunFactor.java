package org.pullproof.worth.decision.problem;

/**
 * By how much a first quote is overrun: a lognormal factor.
 *
 * @param median as often above as below, positive
 * @param p90 exceeded once in ten times, above the median
 */
public record OverrunFactor(double median, double p90) {
    /** Standard normal quantile at 0.9, in the digits of the method (worth.md 1). */
    private static final double Z90 = 1.2816;

    public OverrunFactor {
        Check.positive("The median of an overrun", median);
        Check.that(p90 > median && Double.isFinite(p90), "P90 of an overrun", "above its median " + median, p90);
    }

    /** σ = ln(P90/median)/1.2816. */
    public double sigma() {
        return Math.log(p90 / median) / Z90;
    }
}
