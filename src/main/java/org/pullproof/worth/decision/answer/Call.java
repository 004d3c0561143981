package org.pullproof.worth.decision.answer;

/** What the answer amounts to. */
public enum Call {
    /** One option leads by more than the noise. */
    CLEAR("clear"),
    /** The best option of another first act is within the noise. */
    TOO_CLOSE("too-close"),
    /** The car is not bought yet, and better not. */
    WALK_AWAY("walk-away"),
    /** The car is owned, and nothing that costs money pays. */
    STOP_SPENDING("stop-spending");

    private final String key;

    Call(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
