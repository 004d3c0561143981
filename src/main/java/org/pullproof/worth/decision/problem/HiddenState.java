package org.pullproof.worth.decision.problem;

import java.util.Set;

/**
 * One thing that may be so: the set of faults that the engine has.
 *
 * @param faults keys of {@link Problem#faults}; empty for a sound engine
 * @param chance its probability, 0 to 1
 */
public record HiddenState(Set<String> faults, double chance) {
    public HiddenState {
        faults = Set.copyOf(faults);
        Check.chance("The chance of " + faults, chance);
    }

    public boolean has(String fault) {
        return faults.contains(fault);
    }
}
