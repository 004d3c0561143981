package org.pullproof.health;

import java.util.Arrays;
import java.util.Optional;

/**
 * Where the air of a leak-down test is heard, where a person listens for it, and which way it goes there.
 *
 * <p>Source: common practice, no source.
 */
public enum AirPlace {
    CRANKCASE('C', "crankcase", "oil filler or dipstick tube", "past the rings"),
    EXHAUST('E', "exhaust", "tailpipe", "an exhaust valve"),
    INTAKE('I', "intake", "throttle body or carburettor", "an intake valve"),
    NEIGHBOUR('N', "neighbour", "plug hole beside it", "the gasket between the two"),
    COOLANT('B', "coolant", "bubbles in the radiator", "the gasket or a crack to the coolant");

    private final char letter;
    private final String key;
    private final String listenAt;
    private final String path;

    AirPlace(char letter, String key, String listenAt, String path) {
        this.letter = letter;
        this.key = key;
        this.listenAt = listenAt;
        this.path = path;
    }

    public String key() {
        return key;
    }

    /** The key it is typed by at the car, and the letter of its box on paper; B is for bubbles. */
    public char letter() {
        return letter;
    }

    /** Where a person listens or looks. */
    public String listenAt() {
        return listenAt;
    }

    /** The way the air takes when it is heard there. */
    public String path() {
        return path;
    }

    public static Optional<AirPlace> named(String key) {
        return Arrays.stream(values()).filter(place -> place.key.equals(key)).findFirst();
    }

    /** The place that is typed by a letter. */
    public static Optional<AirPlace> lettered(char letter) {
        return Arrays.stream(values()).filter(place -> place.letter == letter).findFirst();
    }
}
