package org.pullproof.health.faults;

import java.util.List;
import java.util.Map;

/**
 * What signs of the whole engine make of prior odds: factors, 1 where nothing is said.
 *
 * @param states by state
 * @param cylinders by cylinder, 1 first, then by fault
 * @param pairs by pair
 */
public record Odds(Map<EngineState, Double> states, List<Map<Fault, Double>> cylinders, Map<Pair, Double> pairs) {
    double of(EngineState state) {
        return states.getOrDefault(state, 1.0);
    }

    double of(int cylinder, Fault fault) {
        return cylinders.size() < cylinder ? 1 : cylinders.get(cylinder - 1).getOrDefault(fault, 1.0);
    }

    double of(Pair pair) {
        return pairs.getOrDefault(pair, 1.0);
    }
}
