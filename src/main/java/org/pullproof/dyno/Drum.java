package org.pullproof.dyno;

import java.util.Optional;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/**
 * The roll that the car turns, as told.
 *
 * @param inertia moment of inertia of all that turns with it
 * @param within how well that is known, a share; without it, half of the last digit typed
 * @param radius of the roll, needed where its speed is logged as a speed of its surface
 */
public record Drum(Quantity inertia, Optional<Quantity> within, Optional<Quantity> radius) {
    /** Any roll that a car stands on lies far inside; beyond it the unit is wrong. */
    private static final double LARGEST = 1e5;

    public Drum {
        inertia.requireDimension(Dimension.INERTIA);
        within.ifPresent(share -> share.requireDimension(Dimension.SHARE));
        radius.ifPresent(length -> length.requireDimension(Dimension.LENGTH));
        if (!(inertia.si() > 0 && inertia.si() < LARGEST)) {
            throw new IllegalArgumentException(
                    inertia + " is not the inertia of a roll: it is above 0 and below 100,000 kg·m².");
        }
        if (within.isPresent() && !(within.get().si() >= 0 && within.get().si() < 0.5)) {
            throw new IllegalArgumentException(
                    within.get() + " is not how well an inertia is known: write for instance 1%.");
        }
        if (radius.isPresent() && !(radius.get().si() > 0.02 && radius.get().si() < 5)) {
            throw new IllegalArgumentException(
                    radius.get() + " is not the radius of a roll: it lies between 20 mm and 5 m.");
        }
    }

    /** Inertia in kg·m². */
    public double kgM2() {
        return inertia.si();
    }

    /** How well the inertia is known, as a fraction of it; power carries the same fraction (O). */
    public double share() {
        return within.map(Quantity::si).orElse(inertia.halfStepSi() / inertia.si());
    }

    /** The same drum with its radius in metre, if told. */
    Optional<Double> radiusMetre() {
        return radius.map(Quantity::si);
    }
}
