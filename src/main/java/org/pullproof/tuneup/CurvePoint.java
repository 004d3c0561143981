package org.pullproof.tuneup;

import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/**
 * A point of the mechanical advance curve, as read with the strobe.
 *
 * @param speed of the engine
 * @param advance over base timing, crank degrees
 */
public record CurvePoint(Quantity speed, Quantity advance) {
    public CurvePoint {
        speed.requireDimension(Dimension.ROTATION);
        advance.requireDimension(Dimension.ANGLE);
        if (speed.si() < 0) {
            throw new IllegalArgumentException("An engine speed is not below zero: " + speed);
        }
    }
}
