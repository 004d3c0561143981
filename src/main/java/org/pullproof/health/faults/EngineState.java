package org.pullproof.health.faults;

import java.util.Arrays;
import java.util.Optional;

/** S: what holds for all cylinders of the engine, or for the test, at once. */
public enum EngineState {
    OK("ok"),
    RINGS_ALL("rings-all"),
    CAM_TIMING("cam-timing"),
    TEST_SPOILED("test-spoiled");

    private final String key;

    EngineState(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }

    public static Optional<EngineState> named(String key) {
        return Arrays.stream(values()).filter(state -> state.key.equals(key)).findFirst();
    }
}
