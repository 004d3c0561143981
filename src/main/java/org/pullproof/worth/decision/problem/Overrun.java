package org.pullproof.worth.decision.problem;

/** Which kind of work a first quote is for: kinds overrun differently. */
public enum Overrun {
    /** Work on a part of the engine. */
    REPAIR("repair"),
    /** Work on the whole engine. */
    REBUILD("rebuild"),
    /** A paid bill, a fixed price, the purchase, a dyno hour: what is written is what is paid. */
    NONE("none");

    private final String key;

    Overrun(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
