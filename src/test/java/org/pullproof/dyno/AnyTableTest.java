package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** Tables as they come: what belongs to a pull is kept, the rest is left out and named. Figures are invented. */
class AnyTableTest {
    private static final LocalDateTime WRITTEN = LocalDateTime.of(2026, 6, 20, 9, 15);

    @Test
    void idleBeforeAndCoastingAfterAreCutAwayAndNamed() throws UnreadablePullException {
        PullTable table = read(joined("rpm;kW", idle(), rising(2000, 6000, 100), coasting(6000, 1500)));
        assertThat(table.pulls()).hasSize(1);
        assertThat(table.trace().firstRpm()).isEqualTo(2000);
        assertThat(table.trace().lastRpm()).isEqualTo(6000);
        assertThat(table.problems())
                .extracting(ImportProblem::message)
                .allSatisfy(message -> assertThat(message).contains("no part of a pull"));
    }

    @Test
    void aSecondPullBeginsWhereTheSpeedFallsBack() throws UnreadablePullException {
        PullTable table =
                read(joined("rpm;kW", rising(2000, 6000, 100), coasting(6000, 1500), idle(), rising(2000, 6000, 104)));
        assertThat(table.pulls()).hasSize(2);
        assertThat(table.pulls().get(1).wattAt(4000)).isCloseTo(104e3 * 4000 / 6000, within(1.0));
    }

    @Test
    void aColumnNumbersThePulls() throws UnreadablePullException {
        PullTable table =
                read("run;rpm;kW", "1;2000;40", "1;2050;41", "1;2100;42", "2;2080;50", "2;2150;51", "2;2200;52");
        assertThat(table.pulls()).extracting(Trace::firstRpm).containsExactly(2000.0, 2080.0);
    }

    /** The first rows are whole numbers; only far below does a comma stand where it can part no thousands. */
    @Test
    void aMarkThatIsSeenFarBelowIsThatOfEveryRow() throws UnreadablePullException {
        String[] lines = new String[1001];
        lines[0] = "rpm;kW";
        for (int row = 1; row <= 1000; row++) {
            lines[row] = (2000 + 4 * row) + (row > 900 ? ",5;" : ";") + (row == 400 ? "40,250" : "40,5");
        }
        PullTable table = read(lines);
        assertThat(table.trace().size()).isEqualTo(1000);
        assertThat(table.trace().wattAt(2000 + 4 * 400)).isCloseTo(40_250, within(0.001));
        assertThat(table.trace().lastRpm()).isEqualTo(6000.5);
    }

    @Test
    void aSmallFallInsideIsPartOfThePull() throws UnreadablePullException {
        PullTable table =
                read("rpm;kW", "2000;40", "3000;60", "4000;80", "3600;20", "3800;76", "4100;82", "5000;95", "6000;100");
        assertThat(table.pulls()).hasSize(1);
        assertThat(table.trace().size()).isEqualTo(6);
        assertThat(table.trace().recording().size()).isEqualTo(8);
    }

    @Test
    void aRiseWithoutLoadIsNoPull() throws UnreadablePullException {
        PullTable table = read(joined("rpm;kW", rising(1000, 5000, 2), coasting(5000, 1000), rising(2000, 6000, 100)));
        assertThat(table.pulls()).hasSize(1);
        assertThat(table.trace().firstRpm()).isEqualTo(2000);
    }

    @Test
    void runningUpThroughTheGearsIsNoPull() throws UnreadablePullException {
        PullTable table = read(joined("rpm;kW", rising(1000, 2500, 60), rising(1500, 6000, 100)));
        assertThat(table.pulls()).hasSize(1);
        assertThat(table.trace().lastRpm()).isEqualTo(6000);
    }

    @Test
    void theThrottleSaysWhenThePullBegins() throws UnreadablePullException {
        PullTable table =
                read("rpm;kW;throttle %", "1800;20;12", "1900;21;15", "2000;43;99", "2050;44;100", "2100;45;100");
        assertThat(table.trace().firstRpm()).isEqualTo(2000);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '>',
            value = {
                "rpm;kW|2,000;43|2,025;44 > 2000",
                "rpm;kW|2.000;43|2.025;44 > 2000",
                "rpm;kW|2.000;43,5|2.025;44,25 > 2000",
                "rpm;kW|2 000;43.5|2 025;44.25 > 2000",
                "rpm;kW|2000,0;43,5|2025,5;44,25 > 2000",
                "rpm;kW|2e3;4.3e1|2.025e3;4.4e1 > 2000"
            })
    void thousandsMayBeParted(String lines, double rpm) throws UnreadablePullException {
        PullTable table = read(lines.split("\\|"));
        assertThat(table.trace().firstRpm()).isEqualTo(rpm);
        assertThat(table.trace().watt(0)).isBetween(42_999.0, 43_501.0);
    }

    @ParameterizedTest
    @CsvSource({"n/a", "#N/A", "error", "---", "''", "NaN", "1.2.3"})
    void wordsInsteadOfNumbersLeaveARowOut(String word) throws UnreadablePullException {
        PullTable table = read("rpm;kW", "2000;43", "2050;" + word, "2100;45");
        assertThat(table.trace().size()).isEqualTo(2);
        assertThat(table.problems())
                .singleElement()
                .extracting(ImportProblem::line)
                .isEqualTo(3);
    }

    @Test
    void aChannelThatIsNotNeededMayHaveBlanksAndWords() throws UnreadablePullException {
        PullTable table = read("rpm;kW;coolant C;AFR", "2000;43;88;12.5", "2050;44;;err", "2100;45;90;12.7");
        assertThat(table.trace().size()).isEqualTo(3);
        assertThat(table.problems()).isEmpty();
        assertThat(table.trace().recording().finite(Role.COOLANT)).containsExactly(361.15, 363.15);
        assertThat(table.trace().recording().at(Role.LAMBDA, 0)).isCloseTo(12.5 / 14.7, within(1e-9));
    }

    @Test
    void aTemperatureWithoutUnitIsNotUsedAndSaid() throws UnreadablePullException {
        PullTable table = read("rpm;kW;coolant", "2000;43;88", "2050;44;88");
        assertThat(table.trace().notLogged()).contains(Role.COOLANT);
        assertThat(table.problems())
                .singleElement()
                .extracting(ImportProblem::message)
                .asString()
                .startsWith("the column \"coolant\" has no unit")
                .endsWith("Say it with --column coolant=coolant:°C. It is not used.");
    }

    @Test
    void aChosenChannelIsRead() throws UnreadablePullException {
        PullTable table = PullTable.read(
                Tables.of("rpm;kW;ch 4", "2000;43;190", "2050;44;191"), List.of(ColumnChoice.parse("coolant=ch 4:F")));
        assertThat(table.trace().recording().at(Role.COOLANT, 0)).isCloseTo(360.93, within(0.01));
    }

    @Test
    void fiftyRowsLeftOutAreNamedTogether() throws UnreadablePullException {
        List<String> lines = new ArrayList<>(List.of("rpm;kW", "2000;43"));
        IntStream.range(0, 50).forEach(i -> lines.add("2050;x"));
        lines.add("2100;45");
        List<ImportProblem> problems = read(lines.toArray(String[]::new)).problems();
        assertThat(problems).hasSize(21);
        assertThat(problems.get(20).message()).isEqualTo("30 rows more are left out likewise, up to this line.");
    }

    @Test
    void aFileThatOnlyFallsIsRefused() {
        assertThatThrownBy(() -> read("rpm;kW", "6000;100", "4000;80", "2000;40"))
                .hasMessageContaining("with the speed rising");
    }

    @Test
    void theRollsSpeedGivesThePower() throws UnreadablePullException {
        PullTable table =
                read(new HowRead(List.of(), 1, Optional.of(drum("30kgm2", Optional.empty())), false), roll("rad/s", 1));
        assertThat(table.trace().watt(10)).isCloseTo(30 * 5 * 60.0, within(1.0));
    }

    /** P = I·ω·dω/dt with ω = 50 + 5t rad/s: 60 rad/s at 2 s. A surface speed of 60 × 0.5 m/s = 108 km/h is the same. */
    @Test
    void aSurfaceSpeedNeedsTheRadius() throws UnreadablePullException {
        HowRead how = new HowRead(List.of(), 1, Optional.of(drum("30kgm2", Optional.of("0.5m"))), false);
        assertThat(read(how, roll("km/h", 0.5 * 3.6)).trace().watt(10)).isCloseTo(30 * 5 * 60.0, within(1.0));
    }

    @Test
    void aSurfaceSpeedWithoutRadiusIsRefused() {
        HowRead how = new HowRead(List.of(), 1, Optional.of(drum("30kgm2", Optional.empty())), false);
        assertThatThrownBy(() -> read(how, roll("km/h", 1.8))).hasMessageContaining("--roll-radius");
    }

    @Test
    void withoutADrumTheRollsSpeedIsNoPowerAndTheWayIsTold() {
        assertThatThrownBy(() -> read(roll("rad/s", 1)))
                .hasMessageContaining("no power or torque column")
                .hasMessageEndingWith("with the drum's inertia, --inertia, power follows from it.");
    }

    @Test
    void repeatedTimesAreBorneAndTimesThatGoBackLeftOut() throws UnreadablePullException {
        List<String> lines = new ArrayList<>(List.of(roll("rad/s", 1)));
        lines.add(6, lines.get(5));
        lines.add(9, "0.1;50.5;2020");
        HowRead how = new HowRead(List.of(), 1, Optional.of(drum("30kgm2", Optional.empty())), false);
        PullTable table = read(how, lines.toArray(String[]::new));
        assertThat(table.trace().wattAt(2400)).isCloseTo(30 * 5 * 60.0, within(10.0));
        assertThat(table.problems())
                .extracting(ImportProblem::message)
                .anyMatch(told -> told.contains("go back in time"));
    }

    @ParameterizedTest
    @CsvSource({
        "Date: 2024-05-11, 2024-05-11T09:15",
        "Recorded 2024-05-11T14:03:20, 2024-05-11T14:03:20",
        "Date 2024/05/11 at 14:03, 2024-05-11T14:03"
    })
    void theFileSaysWhenItWasMade(String line, LocalDateTime time) throws UnreadablePullException {
        assertThat(read(line, "rpm;kW", "2000;43", "2050;44").time(WRITTEN)).contains(time);
    }

    @ParameterizedTest
    @CsvSource({"Date: 05/11/2024", "Operator: n.n.", "Serial 2024-99-99"})
    void aDateThatCouldBeTwoIsNone(String line) throws UnreadablePullException {
        assertThat(read(line, "rpm;kW", "2000;43", "2050;44").time(WRITTEN)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "Correction: SAE, true",
        "Power corrected to 25 C, true",
        "Correction: off, false",
        "Uncorrected figures, false",
        "Ambient 24 C, false"
    })
    void thePreambleMaySayThatFiguresAreCorrected(String line, boolean says) throws UnreadablePullException {
        assertThat(read(line, "rpm;kW", "2000;43", "2050;44").trace().saysCorrected())
                .isEqualTo(says);
    }

    private static Drum drum(String inertia, Optional<String> radius) {
        return new Drum(
                Quantity.parse(inertia, Unit.KG_M2.dimension()),
                Optional.empty(),
                radius.map(text -> Quantity.parse(text, Unit.M.dimension())));
    }

    /** The roll turns at 50 + 5t rad/s, the engine 40 rpm for each of them, every 0.2 s. */
    private static String[] roll(String unit, double each) {
        List<String> lines = new ArrayList<>(List.of("time s;roll speed " + unit + ";engine rpm"));
        for (int i = 0; i <= 40; i++) {
            double radian = 50 + 5 * i * 0.2;
            lines.add(String.format(java.util.Locale.ROOT, "%.1f;%.4f;%.1f", i * 0.2, radian * each, radian * 40));
        }
        return lines.toArray(String[]::new);
    }

    private static List<String> idle() {
        return IntStream.range(0, 12)
                .mapToObj(i -> (850 + 5 * (i % 3)) + ";0.4")
                .toList();
    }

    /** Power in proportion to speed. */
    private static List<String> rising(int from, int to, double kilowattAt6000) {
        return IntStream.rangeClosed(0, (to - from) / 50)
                .map(i -> from + 50 * i)
                .mapToObj(rpm -> rpm + ";" + kilowattAt6000 * rpm / 6000)
                .toList();
    }

    private static List<String> coasting(int from, int to) {
        return IntStream.rangeClosed(1, (from - to) / 100)
                .mapToObj(i -> (from - 100 * i) + ";-6.5")
                .toList();
    }

    @SafeVarargs
    private static String[] joined(String header, List<String>... parts) {
        List<String> all = new ArrayList<>(List.of(header));
        for (List<String> part : parts) {
            all.addAll(part);
        }
        return all.toArray(String[]::new);
    }

    private static PullTable read(String... lines) throws UnreadablePullException {
        return PullTable.read(Tables.of(lines), List.of());
    }

    private static PullTable read(HowRead how, String... lines) throws UnreadablePullException {
        return PullTable.read(TableRows.of(Tables.of(lines)), how);
    }
}
