package org.pullproof.units;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount in a currency, as typed. Immutable.
 *
 * @param amount the amount; negative where money comes back
 * @param currency three letters, as in ISO 4217; not checked against a list, so any currency will do
 */
public record Money(BigDecimal amount, String currency) {
    private static final Pattern SHAPE =
            Pattern.compile("\\s*([+\\-\u2212]?\\d{1,15}(?:[.,]\\d{1,2})?)[\\s\u00a0]*([A-Za-z]{3})\\s*");

    public Money {
        if (!currency.matches("[A-Z]{3}")) {
            throw new IllegalArgumentException("A currency has three capital letters, was " + currency);
        }
    }

    /**
     * Reads {@code 1400USD} or {@code 1400,50 EUR}.
     *
     * @throws BadQuantityException if there is no amount or no currency
     */
    public static Money parse(String text) {
        Matcher shape = SHAPE.matcher(text);
        if (!shape.matches()) {
            throw new BadQuantityException("\"" + text + "\" is not an amount of money: write 1400USD or 1400EUR.");
        }
        String figure = shape.group(1).replace(',', '.').replace('\u2212', '-');
        return new Money(new BigDecimal(figure), shape.group(2).toUpperCase(Locale.ROOT));
    }

    public static Money of(double amount, String currency) {
        return new Money(BigDecimal.valueOf(amount), currency);
    }

    public double value() {
        return amount.doubleValue();
    }

    /** As typed: {@code 1400 USD}. */
    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency;
    }
}
