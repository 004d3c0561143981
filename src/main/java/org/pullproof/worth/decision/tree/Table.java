package org.pullproof.worth.decision.tree;

/**
 * The money of every leaf in every state, as means over the draws.
 *
 * <p>Arrays are not copied; whoever made them does not write to them again.
 */
public final class Table {
    private final double[][] value;
    private final double[][] over;

    /**
     * A table.
     *
     * @param value mean net by leaf and state
     * @param over chance that the money exceeds the budget, by leaf and state
     */
    public Table(double[][] value, double[][] over) {
        this.value = value;
        this.over = over;
    }

    /** A table without a budget. */
    public static Table of(double[][] value) {
        return new Table(value, new double[value.length][value.length == 0 ? 0 : value[0].length]);
    }

    double[] value(int leaf) {
        return value[leaf];
    }

    double[] over(int leaf) {
        return over[leaf];
    }

    /** Largest sum in the table, without its sign: what rounding is measured by. */
    double largest() {
        double largest = 0;
        for (double[] row : value) {
            for (double each : row) {
                largest = Math.max(largest, Math.abs(each));
            }
        }
        return largest;
    }
}
