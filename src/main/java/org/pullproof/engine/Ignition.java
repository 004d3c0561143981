package org.pullproof.engine;

/** How the spark gets to the plug. */
public enum Ignition {
    DISTRIBUTOR("distributor"),
    WASTED_SPARK("wasted spark"),
    COIL_ON_PLUG("coil on plug");

    private final String words;

    Ignition(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
