package org.pullproof.car;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What the owner of the car permits now; each level permits all that stand before it. */
public enum Access {
    LOOK_ONLY("look-only", "look only", "eyes, smell, papers"),
    START_IT("start-it", "start it", "balance, vacuum, oil pressure"),
    PLUGS_OUT("plugs-out", "plugs out", "compression, leak-down"),
    DRIVE_IT("drive-it", "drive it", "dyno, coast-down"),
    OWN_IT("own-it", "own it", "everything, lash and covers");

    private final String key;
    private final String words;
    private final String allows;

    Access(String key, String words, String allows) {
        this.key = key;
        this.words = words;
        this.allows = allows;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** What this level adds to the one before it. */
    public String allows() {
        return allows;
    }

    public boolean permits(Access needed) {
        return compareTo(needed) >= 0;
    }

    /**
     * @throws IllegalArgumentException naming the keys there are
     */
    public static Access of(String key) {
        return Arrays.stream(values())
                .filter(access -> access.key.equals(key))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("access is one of " + keys() + ", was \"" + key + "\""));
    }

    private static String keys() {
        return Arrays.stream(values()).map(Access::key).collect(Collectors.joining(", "));
    }
}
