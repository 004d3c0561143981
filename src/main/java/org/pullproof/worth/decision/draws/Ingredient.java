package org.pullproof.worth.decision.draws;

/** What may be drawn; each kind has its own streams. */
public enum Ingredient {
    QUOTE("quote"),
    OVERRUN("overrun"),
    HOURS("hours"),
    /** Z, the one number that says whether this car fights back. */
    SHARED("shared"),
    FIND("find"),
    GAIN("gain"),
    RESTORES("restores"),
    FAILURE("failure"),
    FAILURE_COST("failure-cost"),
    SEE("see");

    private final String key;

    Ingredient(String key) {
        this.key = key;
    }

    String key() {
        return key;
    }
}
