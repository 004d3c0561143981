package org.pullproof.worth.decision;

import org.pullproof.worth.decision.tree.Branch;

/**
 * What one option comes to in every state and draw when its best plan is followed: at a look the outcome is taken by its own draw, a
 * failure comes or does not.
 */
final class Realised {
    private final double[][] net;
    private final double[][] cost;

    Realised(Weighed weighed, int option) {
        int[] picks = weighed.weighing().picks(option, weighed.chances());
        Branch root = weighed.layout().plans().get(option).root();
        int draws = weighed.ledger().draws();
        net = new double[weighed.chances().length][draws];
        cost = new double[net.length][draws];
        for (int s = 0; s < net.length; s++) {
            for (int i = 0; i < draws; i++) {
                int leaf = root.leaf(picks, s, i);
                net[s][i] = weighed.ledger().net(leaf, s, i);
                cost[s][i] = weighed.ledger().money(leaf, s, i);
            }
        }
    }

    /** N by state and draw, absolute. */
    double[][] net() {
        return net;
    }

    /** M by state and draw, without the price. */
    double[][] cost() {
        return cost;
    }

    /** N less that of another option in the same draw. */
    double[][] against(Realised other) {
        double[][] difference = new double[net.length][];
        for (int s = 0; s < net.length; s++) {
            difference[s] = net[s].clone();
            for (int i = 0; i < difference[s].length; i++) {
                difference[s][i] -= other.net[s][i];
            }
        }
        return difference;
    }

    /** Σ_s p(s)·N in every draw. */
    double[] overStates(double[] chances) {
        double[] sum = new double[net[0].length];
        for (int s = 0; s < net.length; s++) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += chances[s] * net[s][i];
            }
        }
        return sum;
    }
}
