package org.pullproof.car;

import org.pullproof.units.Dimension;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.RpmRange;

/** How a fact that was told reads on a sheet: thousands set apart, in the unit and to the digit it was told in. */
public final class FactWords {
    private FactWords() {}

    /**
     * Returns {@code 84,300 mi} for {@code 84300mi}, {@code $6,400} for {@code 6400USD}, {@code 2,600 to 5,000 rpm} for
     * {@code 2600-5000rpm}, the words of an answer for its key, and other words as they are.
     *
     * @param told as a {@link Car} keeps it
     * @throws IllegalArgumentException if the text is not of the fact's kind
     */
    public static String of(Fact fact, String told) {
        return switch (fact.kind()) {
            case ACCESS -> Access.of(told).words();
            case RUNS -> Runs.of(told).words();
            case LENGTH -> Figures.typed(Quantity.parse(told, Dimension.LENGTH));
            case PERCENT -> Figures.typed(Quantity.parse(told, Dimension.SHARE));
            case MONEY -> money(Money.parse(told));
            case BAND -> band(RpmRange.parse(told));
            case RULE -> CompressionRule.of(told).words();
            case NUMBER, YES_NO, WORDS -> told;
        };
    }

    private static String money(Money told) {
        boolean cents = told.amount().stripTrailingZeros().scale() > 0;
        return cents ? Figures.number(told.value(), 2) + Figures.NO_BREAK_SPACE + told.currency() : Figures.money(told);
    }

    private static String band(RpmRange band) {
        return Figures.number(band.fromRpm(), 0) + " to " + Figures.number(band.toRpm(), 0) + Figures.NO_BREAK_SPACE
                + "rpm";
    }
}
