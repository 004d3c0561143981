package org.pullproof.worth.trade;

import java.math.BigDecimal;

/**
 * One number that nobody has measured for this car: a default of the trade, or what the owner put in its place.
 *
 * @param key its name in the session and on the sheet: {@code work.lash.p50}
 * @param words what it is
 * @param unit what it is counted in: money, hours, weeks, chance, share, factor, percent, months
 * @param value as it counts
 * @param own whether the owner has put it in the place of the default
 */
public record JudgedNumber(String key, String words, String unit, double value, boolean own) {
    public JudgedNumber {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(key + ": a finite number, was " + value);
        }
    }

    /** A default of the trade. */
    public static JudgedNumber usual(String key, String words, String unit, double value) {
        return new JudgedNumber(key, words, unit, value, false);
    }

    /** "a worn bore or piston: fails within 12 months: 0.1 (chance)". */
    public String sentence() {
        return words + ": " + shown() + " (" + unit + ")";
    }

    /** The value without needless digits. */
    public String shown() {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    JudgedNumber with(double other) {
        return new JudgedNumber(key, words, unit, other, true);
    }
}
