package org.pullproof.report;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.Conditions;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Factor;

/** How the report words figures, times and circumstances, in the units of one system. */
record Wording(Figures figures) {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final String SPACE = String.valueOf(Figures.NO_BREAK_SPACE);

    static String minute(LocalDateTime time) {
        return MINUTE.format(time);
    }

    static String day(LocalDate date) {
        return DAY.format(date);
    }

    static String clock(LocalDateTime time) {
        return CLOCK.format(time);
    }

    String units() {
        return figures.system() == UnitSystem.US ? "US" : "metric";
    }

    String unit(Shown use) {
        return figures.unit(use).symbol();
    }

    /** The engine in a word: "V8", "in-line 4". */
    static String engine(EngineProfile profile) {
        String name = switch (profile.layout()) {
            case INLINE -> "in-line ";
            case V -> "V";
            case FLAT -> "flat ";
        };
        return name + profile.cylinders();
    }

    /** A cell without its unit, which stands in the head of the column. */
    Cell bare(Optional<Quantity> quantity, Shown use, Unit keyed) {
        return quantity.map(read -> Cell.figure(figures.bare(read.si(), use), keyed.fromSi(read.si())))
                .orElseGet(Cell::notRecorded);
    }

    /** A cell without its unit, from SI. */
    Cell figure(OptionalDouble si, Shown use, Unit keyed) {
        return si.isPresent()
                ? Cell.figure(figures.bare(si.getAsDouble(), use), keyed.fromSi(si.getAsDouble()))
                : Cell.notRecorded();
    }

    /** Power without its unit, from kW. */
    Cell power(OptionalDouble kilowatt) {
        return kilowatt.isPresent()
                ? Cell.figure(figures.bare(kilowatt.getAsDouble() * 1e3, Shown.POWER), kilowatt.getAsDouble())
                : Cell.notRecorded();
    }

    static Cell number(OptionalDouble value, int decimals) {
        return value.isPresent()
                ? Cell.figure(Figures.number(value.getAsDouble(), decimals), value.getAsDouble())
                : Cell.notRecorded();
    }

    /** The air with the time it was read: "98.6 kPa station, 27 °C, 55 %, read 13:40". */
    String air(AirReading air) {
        return air.state().words(figures) + ", read " + clock(air.time());
    }

    /** A factor with its standard: "1.0329 ± 0.0019, SAE J1349". */
    static String factor(Factor factor) {
        return plusMinus(factor) + ", " + factor.standard().words() + range(factor);
    }

    /** A factor below a head that names its standard: "1.0329 ± 0.0019". */
    static String bareFactor(Factor factor) {
        return plusMinus(factor) + range(factor);
    }

    private static String plusMinus(Factor factor) {
        return Figures.number(factor.value(), 4) + SPACE + "±" + SPACE + Figures.number(factor.uncertainty(), 4);
    }

    private static String range(Factor factor) {
        return factor.withinRange() ? "" : ", outside the range of the standard";
    }

    /** How a reading was made, as far as it was recorded: "6 strokes, throttle open, plugs all out". */
    static String conditions(Conditions made) {
        List<String> words = new ArrayList<>();
        made.strokes().ifPresent(count -> words.add(count + SPACE + "strokes"));
        made.throttle().ifPresent(throttle -> words.add("throttle " + name(throttle)));
        made.plugs()
                .ifPresent(plugs -> words.add(plugs == Conditions.Plugs.ALL_OUT ? "all plugs out" : "one plug out"));
        made.engine().ifPresent(warmth -> words.add("engine " + name(warmth)));
        made.crankingVolts().ifPresent(volts -> words.add(typed(volts) + " cranking"));
        made.crankingRpm().ifPresent(speed -> words.add(typed(speed) + " cranking"));
        made.station().ifPresent(station -> words.add("air " + typed(station)));
        made.gauge().ifPresent(words::add);
        made.gaugeStep().ifPresent(step -> words.add("gauge in steps of " + typed(step)));
        made.oil().ifPresent(oil -> words.add(typed(oil) + " of oil"));
        made.closed().ifPresent(shown -> words.add(typed(shown) + " with the hose closed"));
        made.who().ifPresent(who -> words.add("read by " + who));
        return String.join(", ", words);
    }

    /** A quantity as it was typed. */
    static String typed(Quantity quantity) {
        return Figures.typed(quantity);
    }

    private static String name(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }

    /** A difference in percent with its 90 % interval: "+3.1 % (+2.2 to +4.0)". */
    static String interval(double percent, double low, double high) {
        return Figures.signedPercent(percent, 1) + " (" + Figures.signed(low, 1) + " to " + Figures.signed(high, 1)
                + ")";
    }
}
