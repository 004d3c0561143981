package org.pullproof.health;

import java.util.Arrays;
import java.util.Optional;

/** Where the air of a leak-down test is heard. */
public enum AirPlace {
    CRANKCASE("crankcase"),
    EXHAUST("exhaust"),
    INTAKE("intake"),
    NEIGHBOUR("neighbour"),
    COOLANT("coolant");

    private final String key;

    AirPlace(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }

    public static Optional<AirPlace> named(String key) {
        return Arrays.stream(values()).filter(place -> place.key.equals(key)).findFirst();
    }
}
