package org.pullproof.worth.decision.tree;

/** A place in the tree of an option, made ready for reckoning: acts have become part of the leaves they lead to. */
public sealed interface Branch permits Leaf, Look, Pick {

    /**
     * Rolls back from here.
     *
     * @param table money of the leaves
     * @param limit chance over the budget that is still allowed
     * @param weight w(s) = p(s) × likelihood of all that was seen on the way here
     * @param picks written to: the choice that is best at each {@link Pick}
     * @return worth and chance over the budget, by state
     */
    Rolled roll(Table table, double limit, double[] weight, int[] picks);

    /**
     * The mean of any figure of the leaves when the picks are kept.
     *
     * @param figure by leaf and state
     * @return by state
     */
    double[] follow(int[] picks, double[][] figure);

    /** The leaf that is come to in this state and draw. */
    int leaf(int[] picks, int state, int draw);
}
