package org.pullproof.tuneup;

import java.util.List;
import org.pullproof.car.Access;

/**
 * One step of a tune-up.
 *
 * @param id short name in its graph: "h"
 * @param title what to do
 * @param needs steps that come first
 * @param takesOff parts this step takes off the car
 * @param backBeforeStart parts of those, or of its own work, that must be back before the engine starts
 * @param minutes typical time, minutes
 * @param cautions sentences that stand at the act
 * @param kind ordinary work, the start gate, or something done with the engine running
 */
public record Step(
        String id,
        String title,
        List<String> needs,
        List<String> takesOff,
        List<String> backBeforeStart,
        int minutes,
        List<String> cautions,
        Kind kind) {
    public Step {
        needs = List.copyOf(needs);
        takesOff = List.copyOf(takesOff);
        backBeforeStart = List.copyOf(backBeforeStart);
        cautions = List.copyOf(cautions);
    }

    /** When in the tune-up a step belongs. */
    public enum Kind {
        WORK,
        START_GATE,
        RUNNING
    }

    /** What the owner must permit: plugs out for anything that takes parts off, else start it. */
    public Access access() {
        return kind == Kind.RUNNING || takesOff.isEmpty() ? Access.START_IT : Access.PLUGS_OUT;
    }
}
