package org.pullproof.units;

import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * Writes figures for people: in the units of one system, a no-break space before the unit, a true minus, thousands set apart.
 * Immutable and safe between threads.
 *
 * @param system the units figures are written in
 */
public record Figures(UnitSystem system) {
    public static final char NO_BREAK_SPACE = '\u00a0';
    public static final char MINUS = '\u2212';

    public Unit unit(Shown use) {
        return use.unit(system);
    }

    /** The figure without its unit: {@code 158}. */
    public String bare(double si, Shown use) {
        return number(unit(use).fromSi(si), use.decimals(system));
    }

    /** The figure with its unit: {@code 158 psi}. */
    public String of(double si, Shown use) {
        return bare(si, use) + NO_BREAK_SPACE + unit(use).symbol();
    }

    /** A difference (of temperatures too, so the offset of the unit does not enter): {@code ±0.9 hp} without the sign. */
    public String difference(double si, Shown use) {
        return number(si / unit(use).factor(), use.decimals(system))
                + NO_BREAK_SPACE
                + unit(use).symbol();
    }

    /** A quantity in its own unit with the digits that were typed: {@code 84,300 mi}, {@code 98.20 kPa}. */
    public static String typed(Quantity quantity) {
        String space = quantity.unit() == Unit.DEGREE ? "" : String.valueOf(NO_BREAK_SPACE);
        int decimals = Math.max(0, quantity.figure().scale());
        String figure = number(quantity.figure().doubleValue(), decimals);
        return quantity.unit().symbol().isEmpty()
                ? figure
                : figure + space + quantity.unit().symbol();
    }

    /** A percentage from percent points: {@code 5.0 %}. */
    public static String percent(double points, int decimals) {
        return number(points, decimals) + NO_BREAK_SPACE + "%";
    }

    /** A percentage that always shows its sign: {@code +1.4 %}. */
    public static String signedPercent(double points, int decimals) {
        return signed(points, decimals) + NO_BREAK_SPACE + "%";
    }

    /** A number that always shows its sign, but a rounded zero shows none. */
    public static String signed(double value, int decimals) {
        String shown = number(value, decimals);
        boolean zero = shown.chars().allMatch(c -> c == '0' || c == '.');
        return value > 0 && !zero ? "+" + shown : shown;
    }

    /** Money without cents, thousands set apart: {@code $1,400} for USD, {@code 1,400 EUR} else. */
    public static String money(double amount, String currency) {
        String shown = number(Math.abs(amount), 0);
        String sign = amount < 0 && !shown.equals("0") ? String.valueOf(MINUS) : "";
        return currency.equals("USD") ? sign + "$" + shown : sign + shown + NO_BREAK_SPACE + currency;
    }

    public static String money(Money money) {
        return money(money.value(), money.currency());
    }

    /** A number with fixed decimals, thousands set apart, and a true minus; a rounded zero has no sign. */
    public static String number(double value, int decimals) {
        DecimalFormat format = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ROOT));
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        String shown = format.format(value);
        boolean zero = shown.chars().allMatch(c -> c == '0' || c == '.' || c == '-');
        return zero ? shown.replace("-", "") : shown.replace('-', MINUS);
    }

    /** All digits of a number that a person edits, none of them made up: {@code 0.45}, {@code 5}. */
    public static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
