package org.pullproof.weather;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pullproof.units.Figures;
import org.pullproof.units.Pressure;
import org.pullproof.units.Temperature;

/**
 * The air at one moment, from the readings around it (O): between two readings pressure, vapour and temperature run straight with
 * time; before the first and after the last the nearest one stands.
 *
 * @param time the moment
 * @param first the reading before it, or the one it stands on
 * @param second the reading after it, if the moment lies between two
 * @param lastBefore whether the moment itself is not known and the last reading before it was taken
 */
public record PullAir(LocalDateTime time, AirReading first, Optional<AirReading> second, boolean lastBefore) {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_TIME = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);
    private static final Comparator<AirReading> BY_TIME = Comparator.comparing(AirReading::time);

    /** The air at a known moment; empty without readings. */
    public static Optional<PullAir> at(LocalDateTime time, List<AirReading> readings) {
        Optional<AirReading> before = before(time, readings);
        Optional<AirReading> after = readings.stream()
                .filter(reading -> reading.time().isAfter(time))
                .min(BY_TIME);
        boolean exact = before.filter(reading -> reading.time().equals(time)).isPresent();
        return before.isPresent()
                ? before.map(first -> new PullAir(time, first, exact ? Optional.empty() : after, false))
                : after.map(first -> new PullAir(time, first, Optional.empty(), false));
    }

    /** The air of something whose own time is not known: the last reading before that moment; empty if there is none. */
    public static Optional<PullAir> lastBefore(LocalDateTime time, List<AirReading> readings) {
        return before(time, readings).map(reading -> new PullAir(time, reading, Optional.empty(), true));
    }

    private static Optional<AirReading> before(LocalDateTime time, List<AirReading> readings) {
        return readings.stream()
                .filter(reading -> !reading.time().isAfter(time))
                .max(BY_TIME);
    }

    /** How much of the second reading is in it, 0 to 1. */
    double weight() {
        return second.map(later -> seconds(first.time(), time) / seconds(first.time(), later.time()))
                .orElse(0.0);
    }

    private static double seconds(LocalDateTime from, LocalDateTime to) {
        return Duration.between(from, to).toMillis() / 1e3;
    }

    public AirState state() {
        AirState from = first.state();
        return second.map(AirReading::state)
                .map(to -> between(from, to, weight()))
                .orElse(from);
    }

    private static AirState between(AirState from, AirState to, double weight) {
        return new AirState(
                new Pressure(between(from.pressure().pascal(), to.pressure().pascal(), weight)),
                new Pressure(between(from.vapour().pascal(), to.vapour().pascal(), weight)),
                new Temperature(
                        between(from.temperature().kelvin(), to.temperature().kelvin(), weight)));
    }

    private static double between(double from, double to, double weight) {
        return from + weight * (to - from);
    }

    /**
     * The factor of this air. Between two readings the parts of its uncertainty are weighted as the readings are: one instrument
     * read twice is wrong the same way, so they do not average out.
     */
    public Factor factor(Standard standard, Correction correction) {
        Factor start = correction.factor(standard, first);
        return second.map(later -> between(start, correction.factor(standard, later), correction))
                .orElse(start);
    }

    private Factor between(Factor from, Factor to, Correction correction) {
        double value = correction.value(from.standard(), state());
        List<AirPart.Width> parts = List.of(AirPart.values()).stream()
                .map(part -> new AirPart.Width(part, between(width(from, part), width(to, part), weight())))
                .filter(width -> width.halfWidth() > 0)
                .toList();
        return new Factor(from.standard(), value, parts, Correction.outside(from.standard(), state(), value));
    }

    private static double width(Factor factor, AirPart part) {
        return factor.parts().stream()
                .filter(width -> width.part() == part)
                .mapToDouble(AirPart.Width::halfWidth)
                .sum();
    }

    /** Time from the moment to the nearest reading in it. */
    public Duration age() {
        Duration toFirst = Duration.between(first.time(), time).abs();
        return second.map(later -> Duration.between(time, later.time()))
                .filter(toSecond -> toSecond.compareTo(toFirst) < 0)
                .orElse(toFirst);
    }

    /** Change of station pressure from the first reading to the second, kPa; 0 with one reading. */
    public double pressureMoved() {
        return second.map(later -> later.state().pressure().kilopascal()
                        - first.state().pressure().kilopascal())
                .orElse(0.0);
    }

    /** Change of temperature from the first reading to the second, K; 0 with one reading. */
    public double temperatureMoved() {
        return second.map(later -> later.state().temperature().kelvin()
                        - first.state().temperature().kelvin())
                .orElse(0.0);
    }

    /** Which readings, and how far away: "between 13:40 and 14:40", "13:40, 22 min before", "13:50, 4 min after". */
    public String words() {
        if (lastBefore) {
            return DAY_TIME.format(first.time()) + ", the last before its file was taken in";
        }
        return second.map(later -> "between " + CLOCK.format(first.time()) + " and " + CLOCK.format(later.time()))
                .orElseGet(() -> CLOCK.format(first.time()) + ", " + distance());
    }

    private String distance() {
        if (age().toMinutes() == 0) {
            return "at the pull";
        }
        String side = first.time().isAfter(time) ? "after" : "before";
        return age().toMinutes() + String.valueOf(Figures.NO_BREAK_SPACE) + "min " + side;
    }
}
