package org.pullproof.weather;

import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/**
 * A measured power with the friction power of the same engine at the same speed, which air does not change.
 *
 * @param measured power as measured
 * @param friction power lost to friction, as known from motoring
 */
public record Friction(Quantity measured, Quantity friction) {
    public Friction {
        measured.requireDimension(Dimension.POWER);
        friction.requireDimension(Dimension.POWER);
        if (!(measured.si() > 0) || !(friction.si() >= 0)) {
            throw new IllegalArgumentException(
                    "Measured power is above zero and friction power not below it; were " + measured + ", " + friction);
        }
    }

    /** Friction power over measured power. */
    double share() {
        return friction.si() / measured.si();
    }
}
