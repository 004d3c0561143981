package org.pullproof.worth.decision.answer;

/**
 * Something about the question that bends the answer and should be seen to.
 *
 * @param kind what
 * @param words one sentence that says what would be right
 */
public record Remark(Kind kind, String words) {

    /** What may be odd about a question. */
    public enum Kind {
        NO_GAIN_EXPECTED,
        VALUE_PER_HP_HIGH,
        HOURS_FREE,
        NOTHING_FITS_BUDGET,
        ON_THE_EDGE,
        WORTH_DOUBTFUL,
        STATE_CERTAIN,
        DISCOUNT_BELOW_CURE,
        POWER_ESTIMATED,
        HIGH_UP
    }
}
