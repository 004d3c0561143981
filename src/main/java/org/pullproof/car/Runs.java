package org.pullproof.car;

import java.util.Arrays;

/** Whether the engine runs. */
public enum Runs {
    YES("yes", "runs"),
    DIES("dies", "starts, dies"),
    NO("no", "does not run");

    private final String key;
    private final String words;

    Runs(String key, String words) {
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
    public static Runs of(String key) {
        return Arrays.stream(values())
                .filter(runs -> runs.key.equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("runs is one of yes, dies, no, was \"" + key + "\""));
    }
}
