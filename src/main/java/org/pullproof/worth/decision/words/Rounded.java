package org.pullproof.worth.decision.words;

import org.pullproof.units.Figures;

/**
 * Sums as they are said: with their currency, and never finer than two digits of their noise.
 *
 * @param currency three letters
 */
record Rounded(String currency) {
    private static final int DIGITS = 2;

    /** A sum, rounded to two digits of its noise; to whole units where the noise is small. */
    String sum(double value, double noise) {
        double step = Math.max(1, step(noise));
        return Figures.money(Math.round(value / step) * step, currency);
    }

    /** A sum of which the noise is not known: two digits of its own. */
    String sum(double value) {
        return sum(value, value);
    }

    /** A price for a unit, two digits of its own, below ten with one decimal: {@code $6.4}. */
    String price(double value) {
        double tenths = Math.round(value * 10) / 10.0;
        if (Math.abs(value) >= 10 || tenths == Math.rint(tenths)) {
            return sum(value);
        }
        String shown = Figures.number(tenths, 1);
        return currency.equals("USD") ? "$" + shown : shown + Figures.NO_BREAK_SPACE + currency;
    }

    /** What was typed, as it was typed but for cents. */
    String typed(double value) {
        return Figures.money(value, currency);
    }

    /** Where two digits of a figure end: 10 for 520, 1 for 54. */
    private static double step(double noise) {
        double size = Math.abs(noise);
        return size > 0 ? Math.pow(10, Math.floor(Math.log10(size)) - (DIGITS - 1)) : 0;
    }

    /** A chance in percent, two digits: {@code 24 %}, {@code 5.2 %}, {@code 7 %}. */
    static String percent(double chance) {
        double tenths = Math.round(1000 * chance) / 10.0;
        boolean whole = tenths >= 10 || tenths == Math.rint(tenths);
        return Figures.percent(100 * chance, whole ? 0 : 1);
    }
}
