package org.pullproof.units;

import static org.pullproof.units.Dimension.*;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit that a figure may be typed in. SI value = figure × {@link #factor()} + {@link #offset()}; the SI units are pascal, kelvin,
 * watt, newton metre, metre, degree of angle, revolution per minute, cubic metre, kilogram, kg·m², volt, ohm, second,
 * metre a second, lambda and fraction (1 % = 0.01).
 *
 * <p>Factors: exact definitions (inch 0.0254 m, pound 0.45359237 kg, g₀ 9.80665 m/s², mercury 13 595.1 kg/m³ for the
 * conventional inHg), checked against GNU units 2.22 in {@code UnitTest}.
 */
public enum Unit {
    KPA(PRESSURE, 1e3, "kPa", "kpa"),
    PA(PRESSURE, 1, "Pa", "pa"),
    HPA(PRESSURE, 100, "hPa", "hpa", "mbar", "mb"),
    BAR(PRESSURE, 1e5, "bar"),
    PSI(PRESSURE, 6894.757293168361, "psi", "lb/in2", "lbf/in2"),
    INHG(PRESSURE, 3386.388640341, "inHg", "inhg", "\"hg", "in hg"),
    MMHG(PRESSURE, 133.322387415, "mmHg", "mmhg"),
    KGF_CM2(PRESSURE, 98066.5, "kgf/cm²", "kgf/cm2", "kg/cm2", "kg/cm²"),

    CELSIUS(TEMPERATURE, 1, 273.15, "°C", "c", "degc"),
    FAHRENHEIT(TEMPERATURE, 5.0 / 9, 459.67 * 5 / 9, "°F", "f", "degf"),
    KELVIN(TEMPERATURE, 1, 0, "K", "k"),

    KW(POWER, 1e3, "kW", "kw"),
    W(POWER, 1, "W", "w"),
    HP(POWER, 745.6998715822702, "hp", "bhp", "whp"),
    PS(POWER, 735.49875, "PS", "ps", "cv"),

    NM(TORQUE, 1, "N·m", "nm", "n·m", "n m", "n-m"),
    LB_FT(TORQUE, 1.3558179483314006, "lb-ft", "lbft", "lbf-ft", "ft-lb", "ftlb", "lb ft", "lbf·ft", "lb·ft", "lbf ft"),
    KGF_M(TORQUE, 9.80665, "kgf·m", "kgf m", "kgm", "mkg"),

    MM(LENGTH, 1e-3, "mm"),
    M(LENGTH, 1, "m"),
    CM(LENGTH, 1e-2, "cm"),
    KM(LENGTH, 1e3, "km"),
    IN(LENGTH, 0.0254, "in", "inch", "\""),
    FT(LENGTH, 0.3048, "ft"),
    MI(LENGTH, 1609.344, "mi", "miles"),

    DEGREE(ANGLE, 1, "°", "deg", "degrees"),
    RPM(ROTATION, 1, "rpm", "1/min", "min-1", "u/min", "r/min"),
    RAD_S(ROTATION, 9.549296585513721, "rad/s"),
    M_S(SPEED, 1, "m/s"),
    KM_H(SPEED, 1 / 3.6, "km/h", "kmh", "kph"),
    MPH(SPEED, 0.44704, "mph", "mi/h"),
    FT_S(SPEED, 0.3048, "ft/s"),

    LITRE(VOLUME, 1e-3, "L", "l"),
    ML(VOLUME, 1e-6, "mL", "ml", "cc", "cm3", "cm³"),
    CU_IN(VOLUME, 1.6387064e-5, "in³", "in3", "cu in", "ci"),

    KG(MASS, 1, "kg"),
    LB(MASS, 0.45359237, "lb", "lbs"),
    KG_M2(INERTIA, 1, "kg·m²", "kgm2", "kg m2", "kg·m2"),
    LB_FT2(INERTIA, 0.0421401100938048, "lb·ft²", "lbft2", "lb ft2"),
    VOLT(VOLTAGE, 1, "V", "v"),
    OHM(RESISTANCE, 1, "Ω", "ohm"),
    KOHM(RESISTANCE, 1e3, "kΩ", "kohm"),
    SECOND(TIME, 1, "s", "sec", "seconds"),
    MILLISECOND(TIME, 1e-3, "ms", "msec"),
    MINUTE(TIME, 60, "min", "minutes"),
    HOUR(TIME, 3600, "h", "hours"),
    PERCENT(SHARE, 0.01, "%", "percent"),
    LAMBDA(MIXTURE, 1, "λ", "lambda"),
    /** Air to petrol by mass; an instrument that shows it means lambda × 14.7 (M, from memory). */
    AFR(MIXTURE, 1 / 14.7, "AFR", "afr", "a/f", "air/fuel"),
    /** No unit: the size of a jet, a step of a dial. */
    ONE(NUMBER, 1, "");

    private final Dimension dimension;
    private final double factor;
    private final double offset;
    private final List<String> names;

    Unit(Dimension dimension, double factor, String... names) {
        this(dimension, factor, 0, names);
    }

    Unit(Dimension dimension, double factor, double offset, String... names) {
        this.dimension = dimension;
        this.factor = factor;
        this.offset = offset;
        this.names = List.of(names);
    }

    public Dimension dimension() {
        return dimension;
    }

    /** SI units in one of this unit. */
    public double factor() {
        return factor;
    }

    /** The SI value of zero in this unit; 0 but for temperatures. */
    public double offset() {
        return offset;
    }

    /** The way the unit is written beside a figure. */
    public String symbol() {
        return names.get(0);
    }

    public double toSi(double figure) {
        return figure * factor + offset;
    }

    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** Finds the unit of that name, whatever its case; spaces around it do not matter. */
    public static Optional<Unit> named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(unit -> unit.names.stream()
                        .anyMatch(own -> own.toLowerCase(Locale.ROOT).equals(wanted)))
                .findFirst();
    }

    /** The units of one dimension in the order they are offered to a person. */
    public static List<Unit> of(Dimension dimension) {
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension)
                .toList();
    }
}
