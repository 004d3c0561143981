package org.pullproof.tuneup;

import java.util.Optional;
import org.pullproof.units.Quantity;

/**
 * One plug as found and as set.
 *
 * @param cylinder its cylinder
 * @param oldGap gap as found
 * @param newGap gap as set
 * @param torque as tightened
 * @param heatRange of the plug that is in, as it is marked; may be empty
 */
public record PlugRecord(
        int cylinder,
        Optional<Quantity> oldGap,
        Optional<Quantity> newGap,
        Optional<Quantity> torque,
        String heatRange) {
    public PlugRecord {
        heatRange = heatRange.strip();
    }

    /** A plug whose heat range was not noted. */
    public PlugRecord(int cylinder, Optional<Quantity> oldGap, Optional<Quantity> newGap, Optional<Quantity> torque) {
        this(cylinder, oldGap, newGap, torque, "");
    }
}
