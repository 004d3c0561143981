package org.pullproof.worth.decision.answer;

import java.util.List;
import java.util.Optional;

/**
 * What the car is worth paying, before it is bought.
 *
 * @param highest X*, the highest price at which buying is no worse than walking away
 * @param noise of X*, draws and inputs together
 * @param asked the price asked, if known; without it tests are valued at X*, where news is worth most
 * @param least the least the seller takes, if known
 * @param findings what ruling out a fault would add to X*, the largest three that readings speak for
 */
public record PurchaseAnswer(
        Sum highest, double noise, Optional<Double> asked, Optional<Double> least, List<Finding> findings) {
    private static final double STEP = 50;

    public PurchaseAnswer {
        findings = List.copyOf(findings);
    }

    /** X* as it is said: rounded down to 50. */
    public double rounded() {
        return Math.floor(highest.value() / STEP) * STEP;
    }

    /**
     * A line of the negotiation sheet.
     *
     * @param fault its key
     * @param takesOff what it takes off the highest price
     */
    public record Finding(String fault, double takesOff) {}
}
