package org.pullproof.dyno;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Factor;
import org.pullproof.weather.PullAir;
import org.pullproof.weather.TypedAir;

/**
 * What to mind about the air of a pull. Limits are common practice without a source: a reading serves for 20 minutes; pressure
 * that moved by more than 0.3 kPa, or a temperature that moved by more than 3 °C, between two readings was read too seldom; a factor
 * outside 0.93 to 1.07 is for comparing on the day only.
 */
final class WeatherFlags {
    private static final double MOVED_KPA = 0.3;
    private static final double MOVED_KELVIN = 3;
    private static final double LOWEST_FACTOR = 0.93;
    private static final double HIGHEST_FACTOR = 1.07;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);

    private final AirCheck check = new AirCheck();
    private final Optional<Quantity> elevation;

    /**
     * @param elevation of the garage, if told
     */
    WeatherFlags(Optional<Quantity> elevation) {
        this.elevation = elevation;
    }

    List<String> of(PullAir air, Factor factor) {
        return Stream.of(age(air), moved(air), outside(factor))
                .flatMap(Optional::stream)
                .map(sentence -> "weather: " + sentence)
                .toList();
    }

    /** Whether a reading in it cannot be, as far as is known today. */
    boolean isImpossible(PullAir air) {
        return readings(air).anyMatch(typed -> !check.problems(typed, elevation).isEmpty());
    }

    private static Stream<TypedAir> readings(PullAir air) {
        return Stream.concat(Stream.of(air.first()), air.second().stream()).map(AirReading::air);
    }

    /** What is wrong or doubtful with the readings themselves, such as an altimeter setting typed as station pressure. */
    List<String> ofReadings(PullAir air) {
        return readings(air)
                .flatMap(typed -> Stream.concat(
                        check.problems(typed, elevation).stream(), check.doubts(typed, elevation).stream()))
                .distinct()
                .map(sentence -> "weather: " + sentence)
                .toList();
    }

    private static Optional<String> age(PullAir air) {
        if (air.lastBefore()) {
            return Optional.of("nobody told when it was made; the last reading before it was taken in, of "
                    + MINUTE.format(air.first().time()) + ", is used.");
        }
        return air.age().compareTo(AirReading.SERVES) > 0
                ? Optional.of("the nearest reading of the air, " + nearest(air) + ", is " + minutes(air.age())
                        + " away from the pull; a reading serves for " + AirReading.SERVES.toMinutes()
                        + Figures.NO_BREAK_SPACE
                        + "min.")
                : Optional.empty();
    }

    private static String nearest(PullAir air) {
        LocalDateTime first = air.first().time();
        boolean firstIsNearer = Duration.between(first, air.time()).abs().compareTo(air.age()) <= 0;
        return CLOCK.format(firstIsNearer ? first : air.second().orElseThrow().time());
    }

    private static String minutes(Duration age) {
        return age.toMinutes() + String.valueOf(Figures.NO_BREAK_SPACE) + "min";
    }

    private static Optional<String> moved(PullAir air) {
        double kilopascal = Math.abs(air.pressureMoved());
        double kelvin = Math.abs(air.temperatureMoved());
        if (kilopascal <= MOVED_KPA && kelvin <= MOVED_KELVIN) {
            return Optional.empty();
        }
        return Optional.of("between " + CLOCK.format(air.first().time()) + " and "
                + CLOCK.format(air.second().orElseThrow().time()) + " the air moved by "
                + Figures.number(kilopascal, 1) + Figures.NO_BREAK_SPACE + "kPa and " + Figures.number(kelvin, 0)
                + Figures.NO_BREAK_SPACE + "°C without a reading between; read it more often.");
    }

    private static Optional<String> outside(Factor factor) {
        return factor.value() >= LOWEST_FACTOR && factor.value() <= HIGHEST_FACTOR
                ? Optional.empty()
                : Optional.of("factor " + Figures.number(factor.value(), 3)
                        + " lies outside 0.93 to 1.07; compare pulls of the day, don't quote the corrected figure.");
    }
}
