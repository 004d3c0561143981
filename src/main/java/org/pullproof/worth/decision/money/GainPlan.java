package org.pullproof.worth.decision.money;

import java.util.List;
import java.util.Set;
import org.pullproof.worth.decision.problem.Gain;

/**
 * What makes up the gain of an end in a state.
 *
 * @param gains of the end
 * @param cured faults that give back what they took
 */
record GainPlan(List<Gain> gains, Set<String> cured) {
    static final GainPlan NONE = new GainPlan(List.of(), Set.of());
}
