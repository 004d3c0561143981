package org.pullproof.tuneup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Quantity;

/**
 * What is due after the tune-up.
 *
 * @param again what is looked at once more
 * @param breakIn rules for what is new in the engine
 * @param fullLoadLock why the engine must not be loaded fully yet; empty if nothing beds in
 */
public record Afterwards(List<Again> again, List<String> breakIn, Optional<String> fullLoadLock) {
    public Afterwards {
        again = List.copyOf(again);
        breakIn = List.copyOf(breakIn);
    }

    /**
     * Something looked at once more.
     *
     * @param what to look at
     * @param step id of the step it comes from
     * @param day when it is due; the day of the step is after one heat cycle
     * @param odometer or at which reading, if that comes first and the reading at the start gate is known
     * @param when both in words: "next day, 2026-06-15, or 50 mi on"
     * @param done whether it was looked at
     */
    public record Again(
            String what, String step, LocalDate day, Optional<Quantity> odometer, String when, boolean done) {}
}
