package org.pullproof.worth.decision.tree;

/** Worth and chance over the budget of a branch, by state. Arrays are shared and not written to. */
final class Rolled {
    /** A chance of exactly the limit is allowed, whatever the last digit of its sum. */
    private static final double ROUNDING = 1e-12;

    final double[] value;
    final double[] over;

    Rolled(double[] value, double[] over) {
        this.value = value;
        this.over = over;
    }

    boolean isAllowed(double[] weight, double limit) {
        double sum = Weights.sum(weight);
        return sum <= 0 || Weights.dot(weight, over) / sum <= limit + ROUNDING;
    }
}
