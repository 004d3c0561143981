package org.pullproof.worth.decision.tree;

import java.util.List;

/** Something is seen. */
public final class Look implements Branch {
    private final List<double[]> chances;
    private final List<Branch> children;
    private final double[] uniform;

    /**
     * A look.
     *
     * @param chances P(outcome | state), one row for each outcome; in every state they add up to 1
     * @param children what follows each outcome
     * @param uniform this look's own draws, one for each draw
     */
    public Look(List<double[]> chances, List<Branch> children, double[] uniform) {
        this.chances = List.copyOf(chances);
        this.children = List.copyOf(children);
        this.uniform = uniform;
    }

    /** Σ_e P(e|s) · roll(child e, w·P(e|s)); an outcome that cannot come is passed over. */
    @Override
    public Rolled roll(Table table, double limit, double[] weight, int[] picks) {
        Rolled sum = new Rolled(new double[weight.length], new double[weight.length]);
        for (int e = 0; e < children.size(); e++) {
            double[] seen = Weights.times(weight, chances.get(e));
            if (Weights.sum(seen) > 0) {
                Rolled child = children.get(e).roll(table, limit, seen, picks);
                Weights.addProduct(sum.value, chances.get(e), child.value);
                Weights.addProduct(sum.over, chances.get(e), child.over);
            }
        }
        return sum;
    }

    @Override
    public double[] follow(int[] picks, double[][] figure) {
        double[] sum = new double[chances.get(0).length];
        for (int e = 0; e < children.size(); e++) {
            Weights.addProduct(sum, chances.get(e), children.get(e).follow(picks, figure));
        }
        return sum;
    }

    @Override
    public int leaf(int[] picks, int state, int draw) {
        double upTo = 0;
        int last = children.size() - 1;
        int e = 0;
        while (e < last && uniform[draw] >= (upTo += chances.get(e)[state])) {
            e++;
        }
        return children.get(e).leaf(picks, state, draw);
    }
}
