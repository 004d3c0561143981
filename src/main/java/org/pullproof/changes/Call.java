package org.pullproof.changes;

/** What the figures allow us to say of a change (power-change.md 3). */
public enum Call {
    GAIN("gain", "gain"),
    LOSS("loss", "loss"),
    SAME("same", "same"),
    NO_CALL("no-call", "no call yet"),
    SPOILED("spoiled", "spoiled");

    private final String key;
    private final String words;

    Call(String key, String words) {
        this.key = key;
        this.words = words;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }
}
