package org.pullproof.worth.decision.tree;

/**
 * An end of a tree.
 *
 * @param index its row in the table
 */
public record Leaf(int index) implements Branch {
    @Override
    public Rolled roll(Table table, double limit, double[] weight, int[] picks) {
        return new Rolled(table.value(index), table.over(index));
    }

    @Override
    public double[] follow(int[] picks, double[][] figure) {
        return figure[index];
    }

    @Override
    public int leaf(int[] picks, int state, int draw) {
        return index;
    }
}
