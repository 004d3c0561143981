package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Readings;

class DynoDaysTest {
    private static final AirReading NOON = Readings.air("2026-06-14T12:00", "98.2kPa", "30C", "60%");
    private static final AirReading LATER = Readings.air("2026-06-14T13:40", "98.1kPa", "31C", "58%");
    private static final AirReading NEXT_DAY = Readings.air("2026-06-15T09:00", "98.9kPa", "22C", "70%");

    @Test
    void aDayIsMadeForTheFirstReading() {
        assertThat(DynoDays.with(List.of(), NOON))
                .containsExactly(new DynoDay(LocalDate.of(2026, 6, 14), List.of(NOON), List.of()));
    }

    @Test
    void readingsOfADayStandInOrderOfTime() {
        List<DynoDay> days = DynoDays.with(DynoDays.with(List.of(), LATER), NOON);
        assertThat(days).singleElement().satisfies(day -> assertThat(day.air()).containsExactly(NOON, LATER));
    }

    @Test
    void daysStandInOrderOfDate() {
        List<DynoDay> days = DynoDays.with(DynoDays.with(List.of(), NEXT_DAY), NOON);
        assertThat(days).extracting(DynoDay::date).isSorted();
    }

    @Test
    void aReadingOfTheSameTimeIsReplaced() {
        AirReading corrected = Readings.air("2026-06-14T12:00", "97.2kPa", "30C", "60%");
        List<DynoDay> days = DynoDays.with(DynoDays.with(List.of(), NOON), corrected);
        assertThat(days.get(0).air()).containsExactly(corrected);
    }

    @Test
    void aPullJoinsItsDayAndKeepsTheAir() {
        List<DynoDay> days = DynoDays.with(DynoDays.with(List.of(), NOON), pull(1));
        assertThat(days).singleElement().satisfies(day -> {
            assertThat(day.air()).containsExactly(NOON);
            assertThat(day.pulls()).containsExactly(pull(1));
        });
    }

    @Test
    void numbersGoOnAfterTheHighest() {
        List<DynoDay> days = DynoDays.with(DynoDays.with(List.of(), pull(1)), pull(4));
        assertThat(DynoDays.nextNumber(days, "base")).isEqualTo(5);
        assertThat(DynoDays.nextNumber(days, "other")).isEqualTo(1);
    }

    private static Pull pull(int number) {
        return new Pull(
                "base",
                number,
                new PullFile("p.csv", "p.csv", "0".repeat(64)),
                LocalDateTime.parse("2026-06-14T13:45"),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }
}
