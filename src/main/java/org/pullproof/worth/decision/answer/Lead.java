package org.pullproof.worth.decision.answer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The best option against the best allowed one with another first act.
 *
 * @param over that other option
 * @param by how far it is behind, with the noise of the draws
 * @param inputNoise what the inputs, each a fifth higher, would change of that
 * @param parts the change by each input
 * @param settledBy what a lead has to exceed to be settled
 */
public record Lead(String over, Sum by, double inputNoise, Map<Input, Double> parts, double settledBy) {
    public Lead {
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts)); // keeps the order
    }

    /** Noise of draws and inputs together: √((2·SE)² + inputNoise²). */
    public double noise() {
        return Math.hypot(2 * by.se(), inputNoise);
    }

    public boolean isSettled() {
        return by.value() >= settledBy;
    }
}
