package org.pullproof.tuneup;

import java.util.Optional;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/**
 * What is looked at once more after a step, when the engine has run.
 *
 * @param what to look at: "wheel nuts and drain plug"
 * @param days how many days on; 0 is the same day, after one heat cycle
 * @param distance or how far on, if that comes first
 */
public record Recheck(String what, int days, Optional<Quantity> distance) {
    public Recheck {
        distance.ifPresent(far -> far.requireDimension(Dimension.LENGTH));
        if (what.isBlank() || days < 0) {
            throw new IllegalArgumentException("A recheck says what, and is 0 or more days on: " + what);
        }
    }
}
