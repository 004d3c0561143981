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
 */
public record PlugRecord(
        int cylinder, Optional<Quantity> oldGap, Optional<Quantity> newGap, Optional<Quantity> torque) {}
