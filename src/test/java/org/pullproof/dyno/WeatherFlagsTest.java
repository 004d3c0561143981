package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.Judgement;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Readings;
import org.pullproof.weather.Standard;

/** Limits: common practice, no source. */
class WeatherFlagsTest {
    private static final AirReading AIR = Readings.air("2026-06-14T13:40", "98.6kPa", "27C", "55%");

    @ParameterizedTest
    @CsvSource({"13:40", "14:00", "13:20"})
    void airReadWithinTwentyMinutesIsFresh(String time) {
        assertThat(flags(Dyno.day(AIR).pull("base", time, 150))).isEmpty();
    }

    @Test
    void olderAirIsFlaggedWithItsAge() {
        assertThat(flags(Dyno.day(AIR).pull("base", "14:05", 150)))
                .containsExactly("weather: the nearest reading of the air, 13:40, is 25\u00a0min away from the pull;"
                        + " a reading serves for 20\u00a0min.");
    }

    @Test
    void ofTwoReadingsAroundTheNearerCounts() {
        AirReading after = Readings.air("2026-06-14T14:20", "98.6kPa", "27C", "55%");
        assertThat(flags(Dyno.day(AIR, after).pull("base", "14:05", 150))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"98.2kPa, 27C, '0.4\u00a0kPa and 0\u00a0°C'", "98.6kPa, 31C, '0.0\u00a0kPa and 4\u00a0°C'"})
    void airThatMovedBetweenTwoReadingsIsFlagged(String pressure, String temperature, String moved) {
        AirReading after = Readings.air("2026-06-14T14:00", pressure, temperature, "55%");
        assertThat(flags(Dyno.day(AIR, after).pull("base", "13:50", 150)))
                .containsExactly("weather: between 13:40 and 14:00 the air moved by " + moved
                        + " without a reading between; read it more often.");
    }

    @Test
    void airThatMovedLittleIsNotFlagged() {
        AirReading after = Readings.air("2026-06-14T14:00", "98.4kPa", "29C", "55%");
        assertThat(flags(Dyno.day(AIR, after).pull("base", "13:50", 150))).isEmpty();
    }

    @Test
    void aFactorFarFromOneIsForComparingOnTheDay() {
        AirReading high = Readings.air("2026-06-14T13:40", "83.8kPa", "30C", "22%");
        assertThat(flags(Dyno.day(high).pull("base", "13:45", 150)))
                .singleElement()
                .asString()
                .startsWith("weather: factor 1.2")
                .endsWith("compare pulls of the day, don't quote the corrected figure.");
    }

    /** Typed before anybody told how high the garage lies: what it looks like is said as soon as that is known. */
    @Test
    void aSettingTypedAsStationPressureIsSaidAtThePull() {
        AirReading wrong = Readings.air("2026-06-14T13:40", "101.3kPa", "27C", "55%");
        Dyno day = Dyno.day(wrong).pull("base", "13:45", 150);
        assertThat(assessed(day.days(), day.traces(), Optional.of(Quantity.of("600", Unit.M))))
                .containsExactly("weather: 101.3 kPa at 600 m looks like an altimeter setting:"
                        + " the station pressure there would be 94.3 kPa.");
    }

    /** SAE J1349, range from memory: 90 to 105 kPa dry. */
    @Test
    void theAnswerDoesNotQuoteAFigureOutsideTheRange() {
        AirReading high = Readings.air("2026-06-14T13:40", "83.8kPa", "30C", "22%");
        Dyno day = Dyno.day(high).pull("base", "13:45", 150);
        assertThat(found(day, Optional.empty()).answer().plain())
                .endsWith("The air lies outside the standard's range: compare on the day, don't quote.");
    }

    @Test
    void theAnswerSaysThatTheAirCannotBeThatOfThePlace() {
        AirReading wrong = Readings.air("2026-06-14T13:40", "101.3kPa", "27C", "55%");
        Dyno day = Dyno.day(wrong).pull("base", "13:45", 150);
        assertThat(found(day, Optional.of(Quantity.of("600", Unit.M))).answer().plain())
                .endsWith("The air typed cannot be that of the place: put it right before quoting this.");
    }

    private static DynoFindings found(Dyno day, Optional<Quantity> elevation) {
        return found(day.days(), day.traces(), elevation);
    }

    @Test
    void aPullWithoutATimeTakesTheLastReadingBeforeItCameInAndSaysSo() {
        Pull pull = new Pull(
                "base",
                1,
                new PullFile("p.csv", "p.csv", "0".repeat(64)),
                LocalDateTime.parse("2026-01-02T08:00"),
                Optional.of(LocalDateTime.parse("2026-06-14T18:00")),
                HowRead.by(List.of()),
                Optional.empty(),
                Optional.empty());
        List<DynoDay> days = List.of(
                new DynoDay(LocalDate.parse("2026-01-02"), List.of(), List.of(pull)),
                new DynoDay(LocalDate.parse("2026-06-14"), List.of(AIR), List.of()));
        Trace trace = Traces.even(2000, 6000, rpm -> 150e3);
        assertThat(assessed(days, Map.of("base-1", trace), Optional.empty()))
                .containsExactly("weather: nobody told when it was made; the last reading before it was taken in, of"
                        + " 14 Jun 2026, 13:40, is used.");
    }

    @Test
    void figuresCorrectedAlreadyHaveNoFlagOfOurAir() {
        assertThat(flags(Dyno.day(AIR).corrected("base", "18:00", 150, Standard.SAE_J1349)))
                .noneMatch(flag -> flag.startsWith("weather"));
    }

    private static List<String> flags(Dyno day) {
        return assessed(day.days(), day.traces(), Optional.empty());
    }

    private static List<String> assessed(List<DynoDay> days, Map<String, Trace> traces, Optional<Quantity> elevation) {
        return found(days, traces, elevation).pulls().get(0).flags();
    }

    private static DynoFindings found(List<DynoDay> days, Map<String, Trace> traces, Optional<Quantity> elevation) {
        return new DynoAssessor(new Correction(), new TradeConstants().pulls(Judgement.own()))
                .assess(
                        days,
                        List.of(),
                        traces,
                        Standard.SAE_J1349,
                        new DynoAssessor.Told(Optional.empty(), elevation, Optional.empty()),
                        new Figures(UnitSystem.METRIC));
    }
}
