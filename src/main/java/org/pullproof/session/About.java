package org.pullproof.session;

import java.util.Arrays;
import java.util.Optional;

/**
 * What a picture shows.
 *
 * @param kind a part, a cylinder, a step or the car
 * @param name which one: the part's name, the cylinder's number, the step's id; empty for the car
 */
public record About(Kind kind, String name) {
    public About {
        if (kind != Kind.CAR && name.isBlank()) {
            throw new IllegalArgumentException("Say which " + kind.key() + " the picture shows");
        }
    }

    public static About part(String name) {
        return new About(Kind.PART, name);
    }

    public static About cylinder(int number) {
        return new About(Kind.CYLINDER, String.valueOf(number));
    }

    /** "battery lead", "cylinder 3", "the car". */
    public String words() {
        return switch (kind) {
            case PART -> name;
            case CYLINDER -> "cylinder " + name;
            case STEP -> "step " + name;
            case CAR -> "the car";
        };
    }

    /** Kinds of things that are photographed. */
    public enum Kind {
        PART("part"),
        CYLINDER("cylinder"),
        STEP("step"),
        CAR("car");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }

        public static Optional<Kind> named(String key) {
            return Arrays.stream(values()).filter(kind -> kind.key.equals(key)).findFirst();
        }
    }
}
