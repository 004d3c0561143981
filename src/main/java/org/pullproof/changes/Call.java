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

    /**
     * The call of one interval: gain or loss where it lies on one side of 0, same where it lies inside ± the smallest difference
     * worth paying for, else no call yet.
     *
     * @param smallest the smallest difference worth paying for, percent
     */
    static Call of(Estimate estimate, double smallest) {
        if (estimate.low() > 0) {
            return GAIN;
        }
        if (estimate.high() < 0) {
            return LOSS;
        }
        return inside(estimate, smallest) ? SAME : NO_CALL;
    }

    /** Whether the interval lies wholly inside ± the smallest difference worth paying for. */
    static boolean inside(Estimate estimate, double smallest) {
        return estimate.low() > -smallest && estimate.high() < smallest;
    }
}
