package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.engine.Setup;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.Judgement;
import org.pullproof.units.Dimension;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.RpmRange;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Readings;
import org.pullproof.weather.Standard;

/** Each flag on either side of its threshold; the thresholds are those of the trade (common practice, no source). */
class PullRulesTest {
    private static final LocalDateTime NINE = LocalDateTime.of(2026, 6, 14, 9, 0);

    /** Read often enough that no pull's air is stale. */
    private static final List<AirReading> AIR = List.of(air("09:00"), air("09:15"), air("09:30"));

    private final List<Pull> pulls = new ArrayList<>();
    private final Map<String, Trace> traces = new HashMap<>();

    private static AirReading air(String clock) {
        return Readings.air("2026-06-14T" + clock, "99.0kPa", "25C", "0%");
    }

    /** Adds a pull of one channel beside time, speed and power, 20 times a second, 250 rpm a second from 2,000 rpm. */
    private PullRulesTest pull(String header, DoubleUnaryOperator figure) throws UnreadablePullException {
        return pull(header, figure, HowRead.by(List.of()));
    }

    private PullRulesTest pull(String header, DoubleUnaryOperator figure, HowRead how) throws UnreadablePullException {
        List<String> lines = new ArrayList<>(List.of("time s;rpm;kW;" + header));
        int level = pulls.size();
        for (int i = 0; i <= 320; i++) {
            double rpm = 2000 + 12.5 * i;
            lines.add(String.format(
                    Locale.ROOT,
                    "%.2f;%.1f;%.3f;%.4f",
                    i * 0.05,
                    rpm,
                    kilowatt(rpm) * (1 + 0.004 * level),
                    figure.applyAsDouble(rpm)));
        }
        return add(lines, how);
    }

    private PullRulesTest add(List<String> lines, HowRead how) throws UnreadablePullException {
        int number = pulls.size() + 1;
        Pull pull = new Pull(
                "base",
                number,
                new PullFile("p", "p", String.format("%064x", number)),
                NINE.plusMinutes(5L * number),
                Optional.empty(),
                how,
                Optional.empty(),
                Optional.empty());
        pulls.add(pull);
        traces.put(
                pull.id(),
                PullTable.read(TableRows.of(Tables.of(lines.toArray(String[]::new))), how)
                        .trace());
        return this;
    }

    private static double kilowatt(double rpm) {
        double x = (rpm - 3900) / 4200;
        return 260 * (1 - x * x) * rpm * Math.PI / 30 / 1e3;
    }

    private List<PullFindings> findings(Standard standard) {
        return new DynoAssessor(new Correction(), new TradeConstants().pulls(Judgement.own()))
                .assess(
                        List.of(new DynoDay(LocalDate.of(2026, 6, 14), AIR, pulls)),
                        List.of(Setup.named("base", "base")),
                        traces,
                        standard,
                        Optional.of(new RpmRange(2600, 5000)),
                        new Figures(UnitSystem.METRIC))
                .pulls();
    }

    private List<String> lastFlags() {
        List<PullFindings> all = findings(Standard.SAE_J1349);
        return all.get(all.size() - 1).flags().stream()
                .map(flag -> flag.replace('\u00a0', ' '))
                .toList();
    }

    private void assertFlag(Optional<String> start) {
        assertThat(lastFlags()).hasSize(start.isPresent() ? 1 : 0);
        start.ifPresent(sentence -> assertThat(lastFlags().get(0)).startsWith(sentence));
    }

    @ParameterizedTest
    @CsvSource({"99, false", "98.1, false", "97.5, true"})
    void theThrottleIsFullWithin98PercentOfTheDay(double open, boolean flagged) throws Exception {
        pull("throttle %", rpm -> 100).pull("throttle %", rpm -> open);
        assertFlag(flagged ? Optional.of("throttle: it is open only 98 % of the widest of the day") : Optional.empty());
    }

    /** Closing by 60 % within one sample of 0.05 s while power stays up is no lift, but not full throttle either. */
    @Test
    void aThrottleThatClosesWithoutLossOfPowerIsNoLift() throws Exception {
        pull("throttle %", rpm -> rpm > 4000 && rpm < 4200 ? 40 : 100);
        assertFlag(Optional.of("throttle: "));
    }

    @ParameterizedTest
    @CsvSource({"0.019, false", "0.021, true", "-0.021, true"})
    void meanLambdaStaysWithinTwoHundredths(double moved, boolean flagged) throws Exception {
        pull("lambda", rpm -> 0.87).pull("lambda", rpm -> 0.87).pull("lambda", rpm -> 0.87 + moved);
        assertFlag(flagged ? Optional.of("mixture: mean lambda in the band is ") : Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({"0.915, 4000, false", "0.925, 3060, false", "0.925, 4000, true"})
    void aboveLambda092ForThreeTenthsOfASecondIsLean(double lambda, double to, boolean flagged) throws Exception {
        pull("lambda", rpm -> rpm > 3000 && rpm < to ? lambda : 0.87);
        assertFlag(
                flagged
                        ? Optional.of("mixture: lean: lambda is above 0.920 from 3,012 to 3,988 rpm.")
                        : Optional.empty());
    }

    /** 14.7 is from memory. 13.6/14.7 = 0.925. */
    @Test
    void anAirFuelRatioIsTakenAsLambda() throws Exception {
        pull("AFR", rpm -> rpm > 3000 && rpm < 4000 ? 13.6 : 12.8);
        assertFlag(Optional.of("mixture: lean: "));
    }

    @ParameterizedTest
    @CsvSource({"0, 0, false", "0, 1, true", "7, 7, false", "7, 9, true"})
    void knockIsCountedFromWhereThePullBegins(double before, double after, boolean flagged) throws Exception {
        pull("knock count", rpm -> rpm < 4000 ? before : after);
        assertFlag(flagged ? Optional.of("knock: the log shows knock, up to ") : Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({"1.4, false", "1.6, true"})
    void boostStaysWithinOneAndAHalfKilopascal(double moved, boolean flagged) throws Exception {
        pull("MAP kPa", rpm -> 180).pull("MAP kPa", rpm -> 180).pull("MAP kPa", rpm -> 180 + moved);
        assertFlag(flagged ? Optional.of("boost: its mean in the band is ") : Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({
        "battery V, 13.3, 13.3, false",
        "battery V, 13.9, 13.1, true",
        "fuel pressure kPa, 300, 287, false",
        "fuel pressure kPa, 300, 284, true"
    })
    void aWeakSupplyIsAWarning(String header, double low, double high, boolean flagged) throws Exception {
        pull(header, rpm -> rpm < 4000 ? low : high);
        assertFlag(flagged ? Optional.of("volts: ") : Optional.empty());
        assertThat(findings(Standard.SAE_J1349).get(0).comparable()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "coolant C, 88, 90.9, false",
        "coolant C, 88, 91.1, true",
        "coolant C, 88, 84.9, true",
        "oil temp C, 96, 100.9, false",
        "oil temp C, 96, 101.1, true",
        "intake air C, 30, 32.9, false",
        "intake air C, 30, 33.1, true"
    })
    void aPullBeginsAsWarmAsTheOthers(String header, double usual, double own, boolean flagged) throws Exception {
        pull(header, rpm -> usual).pull(header, rpm -> usual).pull(header, rpm -> own);
        assertFlag(flagged ? Optional.of("start-window: ") : Optional.empty());
    }

    @Test
    void anIntakeThatCreepsUpIsSoaked() throws Exception {
        for (double celsius : new double[] {30, 32, 33, 33.5, 34, 35.2}) {
            pull("intake air C", rpm -> celsius);
        }
        assertFlag(Optional.of(
                "start-window: soaked: intake temperature at the start is 35 °C, against 30 °C at the first pull"));
    }

    /** Of two pulls no one can tell which is off: the second is held against the first. */
    @Test
    void ofTwoPullsTheSecondIsFlagged() throws Exception {
        pull("coolant C", rpm -> 80).pull("coolant C", rpm -> 88);
        List<PullFindings> both = findings(Standard.SAE_J1349);
        assertThat(both.get(0).flags()).isEmpty();
        assertThat(both.get(1).flags()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "0.009, , ",
        "0.015, rises, the clutch or a tyre slips",
        "0.04, more than, the converter is not locked",
        "-0.015, , "
    })
    void engineOverRollSpeedStaysTheSame(double moved, String said, String cause) throws Exception {
        pull("roll speed rad/s", rpm -> rpm / 30 / (1 + moved * (rpm - 2600) / 2400));
        assertFlag(Optional.ofNullable(said).map(there -> "slip: engine speed over roll speed moves by "));
        Optional.ofNullable(cause)
                .ifPresent(words -> assertThat(lastFlags().get(0)).contains(words));
    }

    @Test
    void aStepInThatRatioIsAChangeOfGear() throws Exception {
        pull("roll speed rad/s", rpm -> rpm < 4000 ? rpm / 30 : rpm / 25);
        assertThat(lastFlags()).singleElement().asString().contains("the gear was changed");
    }

    @ParameterizedTest
    @CsvSource({"1, false", "1.004, false", "0.7376, true", "1.3558, true", "0.7457, true", "1.341, true"})
    void powerIsHeldAgainstTorqueTimesSpeed(double factor, boolean flagged) throws Exception {
        pull("torque Nm", rpm -> kilowatt(rpm) * 1e3 / (rpm * Math.PI / 30) / factor);
        assertFlag(flagged ? Optional.of("unit: power is ") : Optional.empty());
        assertThat(findings(Standard.SAE_J1349).get(0).comparable()).isEqualTo(!flagged);
    }

    /** The roll of 30 kg·m² turns so that its power is the file's power less a constant share: 1.03 is no unit's factor. */
    @ParameterizedTest
    @CsvSource({
        "1.00, ''",
        "1.03, 'corrected: power is 1.030 of the power that the roll''s own speed tells'",
        "1.341, 'unit: power is 1.3410 of the power'"
    })
    void powerIsHeldAgainstTheRoll(double factor, String start) throws Exception {
        List<String> lines = new ArrayList<>(List.of("time s;rpm;kW;roll speed rad/s"));
        for (int i = 0; i <= 160; i++) {
            double second = i * 0.05;
            double radian = 60 + 12 * second;
            lines.add(String.format(
                    Locale.ROOT, "%.2f;%.4f;%.6f;%.6f", second, radian * 35, 30 * radian * 12 / 1e3 * factor, radian));
        }
        Drum drum = new Drum(Quantity.parse("30kgm2", Dimension.INERTIA), Optional.empty(), Optional.empty());
        add(lines, new HowRead(List.of(), 1, Optional.of(drum), false));
        assertFlag(Optional.of(start).filter(text -> !text.isEmpty()));
    }

    @Test
    void aFileThatSaysCorrectedIsNotCorrectedAgainInSilence() throws Exception {
        add(List.of("rpm;corrected power kW", "2000;80", "3000;120", "4000;160", "5500;190"), HowRead.by(List.of()));
        PullFindings pull = findings(Standard.SAE_J1349).get(0);
        assertThat(pull.flags()).anyMatch(flag -> flag.startsWith("corrected: the file says"));
        assertThat(pull.factor()).isEmpty();
        assertThat(pull.bandMeasuredKw()).isEmpty();
        assertThat(pull.comparable()).isFalse();
    }

    @Test
    void onceToldAsMeasuredItIsCorrectedAsAnyOther() throws Exception {
        HowRead told = HowRead.by(List.of()).toldAsMeasured();
        add(List.of("rpm;corrected power kW", "2000;80", "3000;120", "4000;160", "5500;190"), told);
        PullFindings pull = findings(Standard.SAE_J1349).get(0);
        assertThat(pull.flags()).noneMatch(flag -> flag.startsWith("corrected: "));
        assertThat(pull.factor()).isPresent();
    }

    @Test
    void aClockThatStandsOrLeapsIsFlagged() throws Exception {
        List<String> lines = new ArrayList<>(List.of("time s;rpm;kW"));
        for (int i = 0; i <= 320; i++) {
            double rpm = 2000 + 12.5 * i;
            lines.add(String.format(Locale.ROOT, "%.2f;%.1f;%.3f", i * 0.05 + (i > 150 ? 0.2 : 0), rpm, kilowatt(rpm)));
        }
        add(lines, HowRead.by(List.of()));
        assertFlag(Optional.of("time: 0.250 s lie between two samples in the band"));
    }

    @ParameterizedTest
    @CsvSource({"20, true", "8, false"})
    void aSpeedThatFallsIsADip(double fall, boolean flagged) throws Exception {
        List<String> lines = new ArrayList<>(List.of("rpm;kW"));
        for (int i = 0; i <= 320; i++) {
            double rpm = 2000 + 12.5 * i - (i == 150 ? 12.5 + fall : 0);
            lines.add(String.format(Locale.ROOT, "%.1f;%.3f", rpm, kilowatt(2000 + 12.5 * i)));
        }
        add(lines, HowRead.by(List.of()));
        assertFlag(flagged ? Optional.of("dip: the speed falls by 20 rpm at 3,862 rpm") : Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({"2550, 5200, true", "2400, 5050, true", "2450, 5150, false"})
    void thePullReachesBeyondABandThatWasTold(int from, int to, boolean flagged) throws Exception {
        List<String> lines = new ArrayList<>(List.of("rpm;kW"));
        for (int rpm = from; rpm <= to; rpm += 25) {
            lines.add(String.format(Locale.ROOT, "%d;%.3f", rpm, kilowatt(rpm)));
        }
        add(lines, HowRead.by(List.of()));
        assertFlag(flagged ? Optional.of("band: the pull reaches from ") : Optional.empty());
        assertThat(findings(Standard.SAE_J1349).get(0).bandMeasuredKw()).isPresent();
    }

    @Test
    void whatWasNotLoggedIsNamedAndNotJudged() throws Exception {
        pull("lambda", rpm -> 0.87);
        assertThat(findings(Standard.SAE_J1349).get(0).trace().notLogged())
                .containsExactly(
                        Role.THROTTLE,
                        Role.KNOCK,
                        Role.BOOST,
                        Role.VOLTS,
                        Role.COOLANT,
                        Role.OIL,
                        Role.INTAKE,
                        Role.FUEL_PRESSURE);
    }
}
