package org.pullproof.worth.decision.problem;

/** Where a path ends. */
public enum Ending {
    /** Keep the car and drive it. */
    KEEP("keep"),
    /** Keep it and do not drive it: no failure and no gain, but every week is one without the car. */
    LAY_UP("lay-up"),
    /** Sell it; the buyer is told what is known. */
    SELL("sell"),
    /** Break it for parts. */
    PARTS("parts"),
    /** Do not buy it. */
    WALK("walk");

    private final String key;

    Ending(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
