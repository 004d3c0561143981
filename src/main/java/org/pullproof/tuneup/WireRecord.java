package org.pullproof.tuneup;

import java.util.Optional;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/**
 * One plug wire.
 *
 * @param cylinder its cylinder
 * @param resistance from end to end
 * @param length of the wire
 * @param route how it runs, in free words; may be empty
 */
public record WireRecord(int cylinder, Optional<Quantity> resistance, Optional<Quantity> length, String route) {
    public WireRecord {
        resistance.ifPresent(ohm -> ohm.requireDimension(Dimension.RESISTANCE));
        length.ifPresent(metre -> metre.requireDimension(Dimension.LENGTH));
    }

    /** Resistance for a metre of wire, Ω/m; empty unless both are known. */
    public Optional<Double> ohmPerMetre() {
        return resistance.flatMap(ohm -> length.filter(metre -> metre.si() > 0).map(metre -> ohm.si() / metre.si()));
    }
}
