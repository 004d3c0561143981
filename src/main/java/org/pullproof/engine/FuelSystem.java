package org.pullproof.engine;

/** How the fuel gets to the air. */
public enum FuelSystem {
    CARBURETTOR("carburettor"),
    THROTTLE_BODY("throttle-body injection"),
    PORT_INJECTION("port injection"),
    DIRECT_INJECTION("direct injection");

    private final String words;

    FuelSystem(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
