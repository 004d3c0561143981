package org.pullproof.weather;

import org.pullproof.units.Quantity;

/** Which end of what a reading leaves open: half a step below the figure read, the figure itself, half a step above. */
enum Side {
    LOW(-1),
    READ(0),
    HIGH(1);

    private final int direction;

    Side(int direction) {
        this.direction = direction;
    }

    /** A value this many half widths away: value − half, value, value + half. */
    double of(double value, double halfWidth) {
        return value + direction * halfWidth;
    }

    /** The quantity in SI at this end of the step of its last digit. */
    double si(Quantity typed) {
        return of(typed.si(), typed.halfStepSi());
    }
}
