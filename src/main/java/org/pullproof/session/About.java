package org.pullproof.session;

import java.util.Arrays;
import java.util.Optional;

/**
 * What a picture shows.
 *
 * @param kind a part, a cylinder, its plug, what a borescope shows in it, a setup, a step or the car
 * @param name which one: the part's or the setup's name, the cylinder's number, the step's id; empty for the car
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

    /** The plug of a cylinder. */
    public static About plug(int cylinder) {
        return new About(Kind.PLUG, String.valueOf(cylinder));
    }

    /** What a borescope shows in a cylinder. */
    public static About borescope(int cylinder) {
        return new About(Kind.BORESCOPE, String.valueOf(cylinder));
    }

    public static About setup(String name) {
        return new About(Kind.SETUP, name);
    }

    public static About car() {
        return new About(Kind.CAR, "");
    }

    /** "battery lead", "cylinder 3", "the car". */
    public String words() {
        return switch (kind) {
            case PART -> name;
            case CYLINDER -> "cylinder " + name;
            case PLUG -> "plug of cylinder " + name;
            case BORESCOPE -> "borescope in cylinder " + name;
            case SETUP -> "setup " + name;
            case STEP -> "step " + name;
            case CAR -> "the car";
        };
    }

    /** Kinds of things that are photographed. */
    public enum Kind {
        PART("part"),
        CYLINDER("cylinder"),
        PLUG("plug"),
        BORESCOPE("borescope"),
        SETUP("setup"),
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
