package org.pullproof.worth.decision.draws;

import org.pullproof.worth.decision.problem.Quote;

/**
 * The distribution of a quote: straight lines between the points of its quantile function
 *
 * <pre>  (0, a)  (0.1, P10)  (0.5, P50)  (0.9, P90)  (1, b)
 *   a = P10 − ½(P50 − P10), not below 0 when P10 ≥ 0;   b = P90 + ½(P90 − P50)</pre>
 *
 * <p>Takes 0–0–60 and equal points, where a fitted lognormal fails. Own derivation (worth.md 1).
 */
public final class QuoteQuantile {
    private final double[] values;
    private static final double[] SHARES = {0, 0.1, 0.5, 0.9, 1};

    public QuoteQuantile(Quote quote) {
        double least = quote.p10() - (quote.p50() - quote.p10()) / 2;
        double a = quote.p10() >= 0 ? Math.max(0, least) : least;
        double b = quote.p90() + (quote.p90() - quote.p50()) / 2;
        this.values = new double[] {a, quote.p10(), quote.p50(), quote.p90(), b};
    }

    /** The sum that is not exceeded with this chance, 0 to 1. */
    public double at(double share) {
        int k = share < SHARES[1] ? 0 : share < SHARES[2] ? 1 : share < SHARES[3] ? 2 : 3;
        double within = (share - SHARES[k]) / (SHARES[k + 1] - SHARES[k]);
        return values[k] + within * (values[k + 1] - values[k]);
    }

    /** 0.05(a + P10) + 0.2(P10 + P50) + 0.2(P50 + P90) + 0.05(P90 + b). */
    public double mean() {
        double sum = 0;
        for (int k = 0; k < SHARES.length - 1; k++) {
            sum += (SHARES[k + 1] - SHARES[k]) * (values[k] + values[k + 1]) / 2;
        }
        return sum;
    }
}
