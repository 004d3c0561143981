package org.pullproof.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PullAirTest {
    private static final AirReading EARLY = Readings.air("2026-06-14T13:00", "98.00kPa", "20.0C", "0%");
    private static final AirReading LATE = Readings.air("2026-06-14T14:00", "99.00kPa", "30.0C", "0%");

    /** Straight with time between two readings, worked by hand; outside of both the nearest stands. */
    @ParameterizedTest
    @CsvSource({"12:00, 98.00, 20", "13:00, 98.00, 20", "13:15, 98.25, 22.5", "13:45, 98.75, 27.5", "15:00, 99.00, 30"})
    void theAirRunsStraightBetweenTheReadingsAround(String clock, double kPa, double celsius) {
        AirState air = at(clock).state();
        assertThat(air.pressure().kilopascal()).isCloseTo(kPa, within(1e-9));
        assertThat(air.temperature().celsius()).isCloseTo(celsius, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"12:00, 60", "13:00, 0", "13:10, 10", "13:50, 10", "14:30, 30"})
    void theAgeIsTheTimeToTheNearestReading(String clock, int minutes) {
        assertThat(at(clock).age()).isEqualTo(Duration.ofMinutes(minutes));
    }

    @ParameterizedTest
    @CsvSource({
        "12:38, '13:00, 22\u00a0min after'",
        "13:00, '13:00, at the pull'",
        "13:10, between 13:00 and 14:00",
        "14:05, '14:00, 5\u00a0min before'"
    })
    void itSaysWhichReadingsAndHowFarAway(String clock, String words) {
        assertThat(at(clock).words()).isEqualTo(words);
    }

    @Test
    void theMovementBetweenTheReadingsIsTold() {
        assertThat(at("13:10").pressureMoved()).isCloseTo(1, within(1e-9));
        assertThat(at("13:10").temperatureMoved()).isCloseTo(10, within(1e-9));
        assertThat(at("12:00").pressureMoved()).isZero();
    }

    /** Halfway, both readings of one instrument: their uncertainty does not average out, it is that of either. */
    @Test
    void halfwayTheUncertaintyIsTheMeanOfBoth() {
        Correction correction = new Correction();
        double first = correction.factor(Standard.SAE_J1349, EARLY).uncertainty();
        double second = correction.factor(Standard.SAE_J1349, LATE).uncertainty();
        double between = at("13:30").factor(Standard.SAE_J1349, correction).uncertainty();
        assertThat(between).isCloseTo((first + second) / 2, within(first * 0.02));
    }

    @Test
    void theLastReadingBeforeIsTakenWhenTheMomentIsNotKnown() {
        LocalDateTime afternoon = LocalDateTime.parse("2026-06-15T09:00");
        PullAir air = PullAir.lastBefore(afternoon, List.of(EARLY, LATE)).orElseThrow();
        assertThat(air.first()).isEqualTo(LATE);
        assertThat(air.words()).isEqualTo("14 Jun 2026, 14:00, the last before its file was taken in");
    }

    @Test
    void withoutReadingsThereIsNoAir() {
        assertThat(PullAir.at(EARLY.time(), List.of())).isEmpty();
        assertThat(PullAir.lastBefore(EARLY.time().minusHours(1), List.of(EARLY)))
                .isEmpty();
    }

    private static PullAir at(String clock) {
        return PullAir.at(LocalDateTime.parse("2026-06-14T" + clock), List.of(EARLY, LATE))
                .orElseThrow();
    }
}
