package org.pullproof.weather;

import java.util.Arrays;
import java.util.stream.Collectors;

/** A correction standard; the factor itself is in {@link Correction}. */
public enum Standard {
    SAE_J1349("sae-j1349", "SAE J1349"),
    SAE_J607("sae-j607", "SAE J607"),
    ISO_1585("iso-1585", "ISO 1585"),
    DIN_70020("din-70020", "DIN 70020"),
    NONE("none", "not corrected");

    private final String key;
    private final String words;

    Standard(String key, String words) {
        this.key = key;
        this.words = words;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /**
     * @throws IllegalArgumentException naming the keys there are
     */
    public static Standard of(String key) {
        return Arrays.stream(values())
                .filter(standard -> standard.key.equals(key))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("a standard is one of " + keys() + ", was \"" + key + "\""));
    }

    private static String keys() {
        return Arrays.stream(values()).map(Standard::key).collect(Collectors.joining(", "));
    }
}
