package org.pullproof.worth.decision.problem;

import java.util.Set;

/** What the work before an end has cured. */
public sealed interface Cure {
    /** Nothing. */
    Cure NONE = new Faults(Set.of());

    /**
     * These faults, where the engine had them.
     *
     * @param faults keys of {@link Problem#faults}
     */
    record Faults(Set<String> faults) implements Cure {
        public Faults {
            faults = Set.copyOf(faults);
        }
    }

    /**
     * Another engine: every fault is gone and gives back what it took.
     *
     * @param hazard chance that the other engine fails in 12 months, in the place of h₀; below 1
     */
    record AnotherEngine(double hazard) implements Cure {
        public AnotherEngine {
            Check.shareBelowOne("The hazard of another engine", hazard);
        }
    }
}
