package org.pullproof.worth.decision.tree;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Expected value and value of information over the trees of options (Raiffa and Schlaifer 1961, Howard 1966, titles from memory; the
 * checks against printed answers are in {@code WeighingTest}).
 */
public final class Weighing {
    /** Values below this share of the largest sum are rounding. */
    private static final double ROUNDING = 1e-9;

    private final List<Plan> plans;
    private final Table table;
    private final double limit;

    /**
     * Options over a table.
     *
     * @param limit chance over the budget that is still allowed
     */
    public Weighing(List<Plan> plans, Table table, double limit) {
        this.plans = List.copyOf(plans);
        this.table = table;
        this.limit = limit;
    }

    /** The same without a cap. */
    public Weighing uncapped() {
        return new Weighing(plans, table, 1);
    }

    /** What each pick of an option is under these weights. */
    public int[] picks(int option, double[] weight) {
        int[] picks = new int[plans.get(option).picks()];
        plans.get(option).root().roll(table, limit, weight, picks);
        return picks;
    }

    /** Worth of an option by state, its picks made under these weights. */
    public double[] worth(int option, double[] weight) {
        return rolled(option, weight).value;
    }

    private Rolled rolled(int option, double[] weight) {
        Plan plan = plans.get(option);
        return plan.root().roll(table, limit, weight, new int[plan.picks()]);
    }

    /** The best option under these weights. */
    public Best best(double[] weight) {
        return best(weight, new BitSet());
    }

    /**
     * The best option under these weights.
     *
     * @param open options that stay allowed whatever they cost: news may open an option, never close one
     */
    public Best best(double[] weight, BitSet open) {
        List<Rolled> rolled = new ArrayList<>();
        for (int a = 0; a < plans.size(); a++) {
            rolled.add(rolled(a, weight));
        }
        BitSet allowed = allowed(rolled, weight, open);
        int best = allowed.nextSetBit(0);
        double most = Weights.dot(weight, rolled.get(best).value);
        for (int a = allowed.nextSetBit(best + 1); a >= 0; a = allowed.nextSetBit(a + 1)) {
            double value = Weights.dot(weight, rolled.get(a).value);
            if (value > most) {
                best = a;
                most = value;
            }
        }
        return new Best(best, most, allowed);
    }

    /** Those within the budget and those open; all, if there is none. */
    private BitSet allowed(List<Rolled> rolled, double[] weight, BitSet open) {
        BitSet allowed = (BitSet) open.clone();
        for (int a = 0; a < rolled.size(); a++) {
            if (rolled.get(a).isAllowed(weight, limit)) {
                allowed.set(a);
            }
        }
        if (allowed.isEmpty()) {
            allowed.set(0, rolled.size());
        }
        return allowed;
    }

    /**
     * What a finding is worth before its cost: Σ_e best(p·P(e|·)) − best(p). Never negative.
     *
     * @param chance p(s)
     * @param likelihoods P(e|s), one row for each result
     */
    public double valueOf(double[] chance, List<double[]> likelihoods) {
        Best now = best(chance);
        double then = 0;
        for (double[] likelihood : likelihoods) {
            double[] weight = Weights.times(chance, likelihood);
            if (Weights.sum(weight) > 0) {
                then += best(weight, now.allowed()).value();
            }
        }
        double gain = then - now.value();
        return gain < ROUNDING * table.largest() ? 0 : gain;
    }
}
