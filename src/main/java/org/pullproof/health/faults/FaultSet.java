package org.pullproof.health.faults;

import java.util.Map;
import java.util.Optional;

/**
 * One complete account of the engine: which fault is in which cylinder; all other cylinders are sound.
 *
 * @param state of the engine
 * @param faults by cylinder; {@code SOUND} and the cylinders of the pair left out
 * @param pair with a gasket leaking between them
 */
public record FaultSet(EngineState state, Map<Integer, Fault> faults, Optional<Pair> pair) {
    public FaultSet {
        faults = Map.copyOf(faults);
        if (pair.isPresent() && faults.keySet().stream().anyMatch(pair.get()::has)) {
            throw new IllegalArgumentException(
                    "A cylinder has a fault of its own or one with its neighbour: " + faults);
        }
    }

    /**
     * A set with its chance.
     *
     * @param p its chance
     */
    public record Likely(FaultSet set, double p) {}
}
