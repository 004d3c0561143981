package org.pullproof.worth.decision;

import java.util.List;

/** All options draw by draw: which is best how often, what it would have brought more, who beats whom. */
final class Contest {
    /** Sums this near each other are equal. */
    private static final double TIE = 1e-9;

    private final List<Realised> options;
    private final double[] chances;
    private final double[] chanceBest;
    private final double[] regret;

    Contest(List<Realised> options, double[] chances) {
        this.options = options;
        this.chances = chances;
        this.chanceBest = new double[options.size()];
        this.regret = new double[options.size()];
        double[] nets = new double[options.size()];
        int draws = options.get(0).net()[0].length;
        for (int s = 0; s < chances.length; s++) {
            for (int i = 0; i < draws; i++) {
                count(nets, s, i, chances[s] / draws);
            }
        }
    }

    private void count(double[] nets, int s, int i, double weight) {
        double most = Double.NEGATIVE_INFINITY;
        for (int a = 0; a < nets.length; a++) {
            nets[a] = options.get(a).net()[s][i];
            most = Math.max(most, nets[a]);
        }
        int winners = 0;
        for (double net : nets) {
            winners += net >= most - TIE ? 1 : 0;
        }
        for (int a = 0; a < nets.length; a++) {
            chanceBest[a] += nets[a] >= most - TIE ? weight / winners : 0;
            regret[a] += weight * (most - nets[a]);
        }
    }

    /** Share of draws in which an option is best; ties are shared. */
    double chanceBest(int option) {
        return chanceBest[option];
    }

    /** E[max_b N_b − N_a]. */
    double regret(int option) {
        return regret[option];
    }

    /** Share of draws in which one option is not worse than another, states weighted by their chances. */
    double notWorse(int option, int than) {
        double share = 0;
        for (int s = 0; s < chances.length; s++) {
            double[] one = options.get(option).net()[s];
            double[] other = options.get(than).net()[s];
            int times = 0;
            for (int i = 0; i < one.length; i++) {
                times += one[i] >= other[i] - TIE ? 1 : 0;
            }
            share += chances[s] * times / one.length;
        }
        return share;
    }

    /** Whether two options are equal in every state and draw. */
    boolean alike(int option, int other) {
        for (int s = 0; s < chances.length; s++) {
            double[] one = options.get(option).net()[s];
            double[] two = options.get(other).net()[s];
            for (int i = 0; i < one.length; i++) {
                if (Math.abs(one[i] - two[i]) > TIE) {
                    return false;
                }
            }
        }
        return true;
    }
}
