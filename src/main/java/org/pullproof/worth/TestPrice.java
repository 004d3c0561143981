package org.pullproof.worth;

import org.pullproof.units.Money;

/**
 * What a test takes. JudgedNumber: common practice, no source.
 *
 * @param minutesFour minutes on an engine of four cylinders
 * @param minutesEight minutes on an engine of eight
 * @param first money the first time, when the tool has to be bought
 * @param again money every further time
 */
public record TestPrice(int minutesFour, int minutesEight, Money first, Money again) {
    private static final int SHORTEST = 5;

    public TestPrice {
        if (minutesFour < SHORTEST || minutesEight < minutesFour) {
            throw new IllegalArgumentException("A test takes at least " + SHORTEST
                    + " min and no less with more cylinders, was " + minutesFour + " and " + minutesEight);
        }
    }

    /** Minutes for an engine: in proportion between four and eight cylinders and beyond, at least {@value #SHORTEST}. */
    public int minutes(int cylinders) {
        double perCylinder = (minutesEight - minutesFour) / 4.0;
        return Math.max(SHORTEST, (int) Math.round(minutesFour + perCylinder * (cylinders - 4)));
    }
}
