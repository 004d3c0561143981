package org.pullproof.car;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What the owner of the car permits now; each level permits all that stand before it. */
public enum Access {
    LOOK_ONLY("look-only", "look only", "eyes, smell, papers", "a look, a smell and the papers"),
    START_IT("start-it", "start it", "balance, vacuum, oil pressure", "balance, vacuum and oil pressure"),
    PLUGS_OUT("plugs-out", "plugs out", "compression, leak-down", "compression and leak-down"),
    DRIVE_IT("drive-it", "drive it", "dyno, coast-down", "the dyno and a coast-down"),
    OWN_IT("own-it", "own it", "lash, covers, everything", "the lash and what lies under covers");

    private final String key;
    private final String words;
    private final String allows;
    private final String inSentence;

    Access(String key, String words, String allows, String inSentence) {
        this.key = key;
        this.words = words;
        this.allows = allows;
        this.inSentence = inSentence;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** What this level adds to the one before it, as a list. */
    public String allows() {
        return allows;
    }

    /** What this level adds to the one before it, as part of a sentence. */
    public String allowsInSentence() {
        return inSentence;
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
