package org.pullproof.worth.decision;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.worth.decision.answer.Sum;
import org.pullproof.worth.decision.draws.Batches;
import org.pullproof.worth.decision.money.Figure;
import org.pullproof.worth.decision.problem.HiddenState;
import org.pullproof.worth.decision.problem.Likelihood;
import org.pullproof.worth.decision.problem.MoneyTest;
import org.pullproof.worth.decision.tree.Best;
import org.pullproof.worth.decision.tree.Weights;

/** What findings are worth before their cost. */
final class Information {
    private final Weighed weighed;
    private final Best now;

    Information(Weighed weighed) {
        this.weighed = weighed;
        this.now = weighed.best();
    }

    static List<double[]> rows(MoneyTest test) {
        return test.results().stream().map(Likelihood::row).toList();
    }

    /** Both tests together, independent given the state. */
    static List<double[]> product(List<double[]> one, List<double[]> other) {
        List<double[]> rows = new ArrayList<>();
        one.forEach(first -> other.forEach(second -> rows.add(Weights.times(first, second))));
        return rows;
    }

    /** A test that shows whether a fault is there. */
    List<double[]> shows(String fault) {
        double[] there = weighed.problem().states().stream()
                .mapToDouble(state -> state.has(fault) ? 1 : 0)
                .toArray();
        double[] absent = weighed.problem().states().stream()
                .mapToDouble(state -> state.has(fault) ? 0 : 1)
                .toArray();
        return List.of(there, absent);
    }

    /** A test that shows the state. */
    List<double[]> showsState() {
        List<HiddenState> states = weighed.problem().states();
        List<double[]> rows = new ArrayList<>();
        for (int s = 0; s < states.size(); s++) {
            double[] row = new double[states.size()];
            row[s] = 1;
            rows.add(row);
        }
        return rows;
    }

    double value(List<double[]> likelihoods) {
        return weighed.weighing().valueOf(weighed.chances(), likelihoods);
    }

    /** The value with the noise of the draws; 0 without noise when no result changes the act. */
    Sum figure(List<double[]> likelihoods) {
        double value = value(likelihoods);
        return new Sum(value, value == 0 ? 0 : Batches.standardError(batches(likelihoods)));
    }

    /** The best option after a result; what is allowed now stays allowed. */
    Best after(double[] likelihood) {
        return weighed.weighing().best(Weights.times(weighed.chances(), likelihood), now.allowed());
    }

    private double[] batches(List<double[]> likelihoods) {
        double[] sum = best(now.option(), weighed.chances());
        for (int b = 0; b < sum.length; b++) {
            sum[b] = -sum[b];
        }
        for (double[] likelihood : likelihoods) {
            double[] weight = Weights.times(weighed.chances(), likelihood);
            if (Weights.sum(weight) > 0) {
                double[] then = best(after(likelihood).option(), weight);
                for (int b = 0; b < sum.length; b++) {
                    sum[b] += then[b];
                }
            }
        }
        return sum;
    }

    private double[] best(int option, double[] weight) {
        int[] picks = weighed.weighing().picks(option, weight);
        return weighed.batches(Figure.NET, option, picks, weight);
    }
}
