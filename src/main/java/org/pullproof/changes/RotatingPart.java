package org.pullproof.changes;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A part between crankshaft and roll that is spun up in a pull. Making it lighter, or turning it slower, reads as power while the
 * speed rises, so pulls before and after such a change cannot be compared (C, common practice without a source).
 */
public enum RotatingPart {
    FLYWHEEL("flywheel"),
    CLUTCH("clutch"),
    DRIVELINE("driveline"),
    GEAR("gear"),
    WHEELS("wheels"),
    TYRES("tyres");

    private final String key;

    RotatingPart(String key) {
        this.key = key;
    }

    /** The word for it, in files, on the command line and in sentences. */
    public String key() {
        return key;
    }

    public static Optional<RotatingPart> named(String key) {
        return Arrays.stream(values())
                .filter(part -> part.key.equalsIgnoreCase(key.strip()))
                .findFirst();
    }

    public static List<String> keys() {
        return Arrays.stream(values()).map(RotatingPart::key).toList();
    }

    @Override
    public String toString() {
        return key;
    }
}
