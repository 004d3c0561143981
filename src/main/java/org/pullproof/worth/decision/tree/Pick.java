package org.pullproof.worth.decision.tree;

import java.util.List;

/**
 * The owner picks.
 *
 * @param index its place among the picks of its option
 * @param children what there is to pick from
 */
public record Pick(int index, List<Branch> children) implements Branch {
    public Pick {
        children = List.copyOf(children);
    }

    /** Of the children within the budget (all, if none is) the one with the largest Σ w·value; ties go to the first. */
    @Override
    public Rolled roll(Table table, double limit, double[] weight, int[] picks) {
        List<Rolled> rolled = children.stream()
                .map(child -> child.roll(table, limit, weight, picks))
                .toList();
        boolean none = rolled.stream().noneMatch(child -> child.isAllowed(weight, limit));
        int best = -1;
        double most = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < rolled.size(); c++) {
            double value = Weights.dot(weight, rolled.get(c).value);
            if ((none || rolled.get(c).isAllowed(weight, limit)) && (best < 0 || value > most)) {
                best = c;
                most = value;
            }
        }
        picks[index] = best;
        return rolled.get(best);
    }

    @Override
    public double[] follow(int[] picks, double[][] figure) {
        return children.get(picks[index]).follow(picks, figure);
    }

    @Override
    public int leaf(int[] picks, int state, int draw) {
        return children.get(picks[index]).leaf(picks, state, draw);
    }
}
