package org.pullproof.tuneup;

import java.util.Arrays;
import java.util.Optional;

/** Where the vacuum canister draws from. */
public enum VacuumSource {
    PORTED("ported", "ported: none at idle"),
    MANIFOLD("manifold", "manifold: full at idle"),
    NONE("none", "no vacuum advance");

    private final String key;
    private final String words;

    VacuumSource(String key, String words) {
        this.key = key;
        this.words = words;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    public static Optional<VacuumSource> named(String key) {
        return Arrays.stream(values()).filter(source -> source.key.equals(key)).findFirst();
    }
}
