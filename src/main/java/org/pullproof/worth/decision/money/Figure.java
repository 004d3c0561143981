package org.pullproof.worth.decision.money;

/** A figure that every end has in every state. The parts of the net count as they enter it, costs negative. */
public enum Figure {
    /** N, with H'·L in the place of a drawn failure. */
    NET,
    /** Chance that the money exceeds the budget. */
    OVER_BUDGET,
    /** Part of the net: what the car fetches or stays worth, after what selling costs. */
    CAR,
    /** Part of the net: money without the price. */
    MONEY,
    /** Part of the net: the price. */
    PRICE,
    /** Part of the net: own hours at their price. */
    HOURS_PRICED,
    /** Part of the net: weeks without the car at their price, where the car is kept. */
    WEEKS_PRICED,
    /** Part of the net: gained power at its worth. */
    POWER_PRICED,
    /** Part of the net: H'·L. */
    FAILURE,
    /** T, own hours. */
    HOURS,
    /** K, weeks without the car. */
    WEEKS,
    /** G, gained power in hp. */
    POWER
}
