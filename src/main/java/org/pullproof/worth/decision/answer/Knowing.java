package org.pullproof.worth.decision.answer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What it would be worth to know for certain, before any cost.
 *
 * @param everything which state the engine is in
 * @param faults whether each fault is there, by its key
 * @param ingredients at most what knowing a bill or a gain exactly is worth, the largest first
 */
public record Knowing(double everything, Map<String, Sum> faults, List<Ingredient> ingredients) {

    /** What may be known exactly. */
    public enum Kind {
        /** A written quote for a line. */
        QUOTE("quote"),
        /** A measured gain. */
        GAIN("gain");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /**
     * One bill or gain.
     *
     * @param kind which of the two
     * @param name the line or the gain
     * @param atMost what knowing it is worth at most
     */
    public record Ingredient(Kind kind, String name, double atMost) {}

    public Knowing {
        faults = Collections.unmodifiableMap(new LinkedHashMap<>(faults)); // keeps the order
        ingredients = List.copyOf(ingredients);
    }

    /**
     * What knowing whether a fault is there is worth.
     *
     * @throws IllegalArgumentException if the problem has no such fault
     */
    public Sum fault(String key) {
        Sum worth = faults.get(key);
        if (worth == null) {
            throw new IllegalArgumentException("The problem has no fault \"" + key + "\".");
        }
        return worth;
    }
}
