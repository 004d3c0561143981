package org.pullproof.worth.decision.problem;

/**
 * A hard cap on money.
 *
 * @param cap B, not negative
 * @param withPrice whether the price of the car has to fit in too
 */
public record Budget(double cap, boolean withPrice) {
    public Budget {
        Check.notNegative("The budget", cap);
    }
}
