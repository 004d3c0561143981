package org.pullproof.worth.decision.problem;

/**
 * What a bill is expected to come to before it overruns, in the currency of the problem.
 *
 * @param p10 undercut once in ten times
 * @param p50 as often above as below
 * @param p90 exceeded once in ten times
 */
public record Quote(double p10, double p50, double p90) {
    public Quote {
        Check.finite("P10 of a quote", p10);
        Check.finite("P90 of a quote", p90);
        Check.that(p10 <= p50 && p50 <= p90, "A quote", "given as P10 ≤ P50 ≤ P90", p10 + ", " + p50 + ", " + p90);
    }

    /** One figure: a paid bill, a fixed price. */
    public static Quote fixed(double value) {
        return new Quote(value, value, value);
    }

    public boolean isFixed() {
        return p10 == p90;
    }
}
