package org.pullproof.health.nexttest;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.pullproof.health.faults.Candidate;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.Outcomes;

/**
 * What to do about one cylinder, in money: leave it, see to spark and mixture, set the lash, take the head off, go to the bottom end.
 * All sums of money are judgement.
 */
final class Decision {
    private final FaultConstants.FurtherTests constants;
    private final Collection<String> acts;

    Decision(FaultConstants.FurtherTests constants) {
        this.constants = constants;
        this.acts = constants.acts().keySet().stream().sorted().toList();
    }

    /** Cost of the act, and more for a fault that it leaves. */
    private double loss(String act, Fault fault) {
        boolean cured = fault == Fault.SOUND
                || constants.cures().getOrDefault(act, List.of()).contains(fault);
        return constants.acts().getOrDefault(act, 0.0) + (cured ? 0 : constants.left());
    }

    /** min over acts of Σ_f weight(f) loss(act, f). */
    private double least(List<Candidate> candidates, ToDoubleFunction<Integer> weight) {
        return acts.stream()
                .mapToDouble(act -> {
                    double sum = 0;
                    for (int f = 0; f < candidates.size(); f++) {
                        sum += weight.applyAsDouble(f)
                                * loss(act, candidates.get(f).fault());
                    }
                    return sum;
                })
                .min()
                .orElse(0);
    }

    /** V = min_act E[loss] − Σ_o P(o) min_act E[loss | o], in money; never below 0 but for rounding. */
    double value(Outcomes test) {
        double now = least(test.candidates(), f -> test.before().get(f));
        double then = 0;
        for (int o = 0; o < test.count(); o++) {
            int outcome = o;
            then += least(
                    test.candidates(),
                    f -> test.before().get(f) * test.given().get(f).get(outcome));
        }
        return Math.max(0, now - then);
    }

    /** What it would be worth to know for certain: no test is worth more. */
    double valueOfCertainty(Map<Candidate, Double> chances) {
        List<Candidate> candidates = List.copyOf(chances.keySet());
        double now = least(candidates, f -> chances.getOrDefault(candidates.get(f), 0.0));
        double then = chances.entrySet().stream()
                .mapToDouble(entry -> entry.getValue()
                        * acts.stream()
                                .mapToDouble(act -> loss(act, entry.getKey().fault()))
                                .min()
                                .orElse(0))
                .sum();
        return Math.max(0, now - then);
    }
}
