package org.pullproof.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A figure as it was typed: the digits, so the resolution is kept, and the unit. Immutable.
 *
 * @param figure the number as typed; {@code 98.20} keeps its trailing zero
 * @param unit the unit typed beside it
 */
public record Quantity(BigDecimal figure, Unit unit) {
    private static final int MOST_DIGITS = 40;
    private static final Pattern SHAPE = Pattern.compile("\\s*([+\\-\u2212]?\\d*[.,]?\\d+)[\\s\u00a0]*(.*?)\\s*");

    /**
     * Reads {@code 98.2kPa}, {@code 98,2 kPa} or {@code 29.92 inHg}. A comma is a decimal mark.
     *
     * @throws BadQuantityException if there is no figure, no unit, an unknown unit or one of another dimension
     */
    public static Quantity parse(String text, Dimension wanted) {
        Matcher shape = SHAPE.matcher(text);
        if (text.length() > MOST_DIGITS || !shape.matches()) {
            throw new BadQuantityException(
                    quoted(text) + " is not " + wanted.words() + ": write " + examples("98.2", wanted) + ".");
        }
        String figure = shape.group(1).replace(',', '.').replace('\u2212', '-');
        return new Quantity(new BigDecimal(figure), unit(text, figure, shape.group(2), wanted));
    }

    /**
     * Reads a quantity of whatever dimension its unit has; a bare figure is a number without unit.
     *
     * @throws BadQuantityException if there is no figure or an unknown unit
     */
    public static Quantity parse(String text) {
        Matcher shape = SHAPE.matcher(text);
        Optional<Unit> unit = shape.matches() ? Unit.named(shape.group(2)) : Optional.empty();
        return unit.map(known -> parse(text, known.dimension()))
                .orElseThrow(() -> new BadQuantityException(quoted(text)
                        + " is not a figure with a unit known here: write for instance 32deg or 0.040in."));
    }

    /** Reads a quantity where a bare figure is taken in the unit that stands beside the field. */
    public static Quantity parse(String text, Unit beside) {
        Matcher shape = SHAPE.matcher(text);
        boolean bare = shape.matches() && shape.group(2).isEmpty();
        return parse(bare ? text.strip() + beside.symbol() : text, beside.dimension());
    }

    public static Quantity of(double figure, Unit unit) {
        return new Quantity(BigDecimal.valueOf(figure), unit);
    }

    public static Quantity of(String figure, Unit unit) {
        return new Quantity(new BigDecimal(figure), unit);
    }

    private static Unit unit(String text, String figure, String name, Dimension wanted) {
        if (name.isEmpty() && wanted != Dimension.NUMBER) {
            throw new BadQuantityException(quoted(text) + " has no unit: write " + examples(figure, wanted) + ".");
        }
        Unit unit = Unit.named(name)
                .orElseThrow(() -> new BadQuantityException(
                        quoted(name) + " is not a unit known here: write " + examples(figure, wanted) + "."));
        if (unit.dimension() != wanted) {
            throw new BadQuantityException(
                    quoted(text) + " is " + unit.dimension().words() + ", not " + wanted.words() + ": write "
                            + examples(figure, wanted) + ".");
        }
        return unit;
    }

    private static String examples(String figure, Dimension wanted) {
        return Unit.of(wanted).stream().map(unit -> figure + unit.symbol()).collect(Collectors.joining(" or "));
    }

    private static String quoted(String text) {
        String shown = text.length() > MOST_DIGITS ? text.substring(0, MOST_DIGITS) + "…" : text;
        return "\"" + shown + "\"";
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** The value in the SI unit of its dimension, see {@link Unit}. */
    public double si() {
        return unit.toSi(figure.doubleValue());
    }

    /** Half a step of the last digit typed, in SI: what the reading cannot tell apart. */
    public double halfStepSi() {
        return 0.5 * Math.pow(10, -figure.scale()) * unit.factor();
    }

    /** The value in another unit of the same dimension. */
    public double in(Unit other) {
        requireDimension(other.dimension());
        return unit == other ? figure.doubleValue() : other.fromSi(si());
    }

    /**
     * @throws IllegalArgumentException if this is of another dimension
     */
    public Quantity requireDimension(Dimension wanted) {
        if (dimension() != wanted) {
            throw new IllegalArgumentException(this + " is " + dimension().words() + ", not " + wanted.words());
        }
        return this;
    }

    public Pressure pressure() {
        requireDimension(Dimension.PRESSURE);
        return new Pressure(si());
    }

    public Temperature temperature() {
        requireDimension(Dimension.TEMPERATURE);
        return new Temperature(si());
    }

    /** The figure and unit as typed: {@code 98.20 kPa}; {@link #parse(String, Dimension)} reads it back the same. */
    @Override
    public String toString() {
        return (figure.toPlainString() + " " + unit.symbol()).stripTrailing();
    }
}
