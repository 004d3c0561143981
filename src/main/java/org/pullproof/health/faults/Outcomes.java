package org.pullproof.health.faults;

import java.util.List;

/**
 * What a test on a cylinder may find.
 *
 * @param candidates what may hold
 * @param before p(f), sums 1
 * @param given P(o | f), a row for each candidate, each row sums 1
 */
public record Outcomes(List<Candidate> candidates, List<Double> before, List<List<Double>> given) {
    public Outcomes {
        candidates = List.copyOf(candidates);
        before = List.copyOf(before);
        given = List.copyOf(given);
    }

    public int count() {
        return given.get(0).size();
    }

    /** P(o) = Σ_f p(f) P(o | f). */
    public double chance(int outcome) {
        double sum = 0;
        for (int f = 0; f < candidates.size(); f++) {
            sum += before.get(f) * given.get(f).get(outcome);
        }
        return sum;
    }

    /** I = Σ p(f) P(o | f) log₂(P(o | f)/P(o)), bits. */
    public double information() {
        double bits = 0;
        for (int o = 0; o < count(); o++) {
            double chance = chance(o);
            for (int f = 0; f < candidates.size(); f++) {
                double joint = before.get(f) * given.get(f).get(o);
                bits += joint > 0 ? joint * Math.log(given.get(f).get(o) / chance) / Math.log(2) : 0;
            }
        }
        return bits;
    }
}
