package org.pullproof.changes;

import java.util.List;
import java.util.OptionalInt;

/**
 * What would settle a change that has no call.
 *
 * @param open whether it is to be settled by more pulls
 * @param pulls how many more; empty if it is settled or would take more than 16
 * @param hingesOn names of the pulls that the call hinges on; one of them is to be checked or repeated first
 */
public record Settling(boolean open, OptionalInt pulls, List<String> hingesOn) {
    /** Nothing is left to settle by pulls. */
    public static final Settling DONE = new Settling(false, OptionalInt.empty(), List.of());

    public Settling {
        hingesOn = List.copyOf(hingesOn);
    }
}
