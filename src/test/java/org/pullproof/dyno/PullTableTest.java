package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Unit;

class PullTableTest {

    /** Factors from GNU units 2.22: 1 hp = 745.69987158 W, 1 PS = 735.49875 W. */
    @ParameterizedTest
    @CsvSource({
        "rpm, power_hp, 74569.987158",
        "rpm, hp, 74569.987158",
        "n [1/min], P [kW], 100000",
        "Engine RPM, Wheel power (kW), 100000",
        "RPM, power kW, 100000",
        "Engine speed (rpm), Power/PS, 73549.875",
        "n, P [W], 100"
    })
    void headersTellRoleAndUnit(String rpm, String power, double watt) throws UnreadablePullException {
        PullTable table = read(rpm + ";" + power, "2000;100", "2050;100");
        assertThat(table.trace().watt(0)).isCloseTo(watt, within(1e-4));
    }

    /** P = M·2π·n/60: 100 N·m at 3000/min are 31.4159 kW; 1 lbf·ft = 1.35581795 N·m (GNU units). */
    @ParameterizedTest
    @CsvSource({
        "M [Nm], 31415.9265",
        "Torque (ft-lb), 42594.2766",
        "torque_lbft, 42594.2766",
        "Torque Nm, 31415.9265",
        "torque_lb_ft, 42594.2766"
    })
    void powerFollowsFromTorqueAndSpeed(String header, double watt) throws UnreadablePullException {
        PullTable table = read("rpm;" + header, "3000;100", "3050;100");
        assertThat(table.trace().watt(0)).isCloseTo(watt, within(1e-3));
    }

    /** Found by spoilt files: 400 digits are more than a double holds (IEEE 754, up to 1.8e308), and made the pull fail. */
    @Test
    void aFigureTooLargeToBeMeasuredIsLeftOutAndNamed() throws UnreadablePullException {
        PullTable table = read("rpm;power kW", "2000;100", "2050;" + "9".repeat(400), "2100;102", "2150;103");
        assertThat(table.trace().size()).isEqualTo(3);
        assertThat(table.problems()).singleElement().asString().contains("is not a figure");
    }

    @Test
    void powerGoesBeforeTorque() throws UnreadablePullException {
        assertThat(read("rpm;torque Nm;power kW", "3000;100;90", "3050;100;91")
                        .trace()
                        .watt(0))
                .isEqualTo(90_000);
    }

    @Test
    void aPreambleAndARowOfUnitsAreUnderstood() throws UnreadablePullException {
        PullTable table = read(
                "Operator: n.n.",
                "Max RPM;6500",
                "Engine speed;Wheel power;Lambda",
                "1/min;kW;-",
                "2000;43.3;0.9",
                "2025;44;0.9");
        assertThat(table.trace().size()).isEqualTo(2);
        assertThat(table.trace().watt(0)).isCloseTo(43_300, within(1e-9));
        assertThat(table.problems()).isEmpty();
    }

    @Test
    void aDecimalCommaIsUnderstood() throws UnreadablePullException {
        assertThat(read("rpm;kW", "2000;43,318", "2025;44,158").trace().watt(0)).isCloseTo(43_318, within(1e-9));
    }

    @Test
    void commasThatPartThousandsAreUnderstood() throws UnreadablePullException {
        Trace trace = read("rpm;kW", "2,000;43.31", "2,025;44.15").trace();
        assertThat(trace.rpm(1)).isEqualTo(2025);
        assertThat(trace.watt(0)).isCloseTo(43_310, within(1e-9));
    }

    @Test
    void aPersonsChoiceGoesBeforeTheHeaders() throws UnreadablePullException {
        List<ColumnChoice> choices = List.of(
                new ColumnChoice(Role.RPM, "drum A", Optional.of(Unit.RPM)),
                new ColumnChoice(Role.POWER, "channel 7", Optional.of(Unit.HP)));
        PullTable table = PullTable.read(Tables.of("drum A;channel 7;power kW", "2000;100;1", "2050;101;1"), choices);
        assertThat(table.trace().watt(0)).isCloseTo(74_569.987, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({
        "2050;;x, the cell is empty",
        "End of run;, \"End of run\" is not a figure",
        "2050;n/a, \"n/a\" is not a figure"
    })
    void aRowWithoutFiguresIsLeftOutAndNamed(String row, String why) throws UnreadablePullException {
        PullTable table = read("rpm;kW;note", "2000;43", row, "2100;45");
        assertThat(table.trace().size()).isEqualTo(2);
        assertThat(table.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.line()).isEqualTo(3);
            assertThat(problem.message()).startsWith(why);
        });
    }

    @Test
    void samplesThatDoNotRiseAreLeftOutAndNamedOnce() throws UnreadablePullException {
        PullTable table = read("rpm;kW", "2000;43", "2050;44", "2050;44", "2040;43", "2100;45");
        assertThat(table.trace().size()).isEqualTo(3);
        assertThat(table.problems())
                .containsExactly(new ImportProblem(
                        4,
                        "rpm",
                        "the speed does not rise above the 2,050 rpm before it; 2 rows up to line 5 are left out."));
    }

    @Test
    void aCoastAfterThePullIsLeftOut() throws UnreadablePullException {
        PullTable table = read("rpm;kW", "2000;43", "5000;90", "4000;-5", "3000;-6", "2000;-7");
        assertThat(table.trace().lastRpm()).isEqualTo(5000);
    }

    @Test
    void aSpeedOfAnotherKindIsLeftOutAndNamed() throws UnreadablePullException {
        assertThat(read("rpm;kW", "0;0", "2000;43", "2050;44").problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.message()).startsWith("0 is no speed of an engine"));
    }

    @Test
    void aHeaderThatSaysCorrectedRaisesADoubt() throws UnreadablePullException {
        assertThat(read("rpm;Corrected power [kW]", "2000;43", "2050;44").problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.message()).contains("corrected already"));
    }

    @Test
    void noSpeedColumnIsSaidWithTheColumnsFound() {
        assertRefused(
                "the file has no rpm column; columns found: time s, power kW.", "time s;power kW", "0;43", "1;44");
    }

    @Test
    void theSpeedOfTheRollIsNotTheEngines() {
        assertRefused("the file has no rpm column", "roll rpm;power kW", "2000;43", "2050;44");
    }

    @Test
    void noPowerColumnIsSaidWithTheColumnsFound() {
        assertRefused(
                "the file has no power or torque column; columns found: time s, roll speed rad/s, engine rpm.",
                "time s;roll speed rad/s;engine rpm",
                "0;65;2000",
                "1;66;2050");
    }

    @Test
    void aColumnWithoutUnitIsRefused() {
        assertRefused("the column \"Power\" has no unit; known are kW, W, hp, PS.", "rpm;Power", "2000;43", "2050;44");
    }

    @Test
    void aStrangeUnitIsRefused() {
        assertRefused(
                "the column \"Power [dynohp]\" has a unit not known here, dynohp",
                "rpm;Power [dynohp]",
                "2000;43",
                "2050;44");
    }

    @Test
    void twoPowerColumnsAreRefused() {
        assertRefused(
                "several columns may be the power: \"wheel power kW\", \"engine power kW\".",
                "rpm;wheel power kW;engine power kW",
                "2000;43;50",
                "2050;44;51");
    }

    @Test
    void aChosenColumnThatIsNotThereIsRefused() {
        assertThatThrownBy(() -> PullTable.read(
                        Tables.of("rpm;kW", "2000;43", "2050;44"), List.of(ColumnChoice.parse("power=channel 7:hp"))))
                .hasMessage("the file has no column \"channel 7\"; columns found: rpm, kW.");
    }

    @Test
    void aTorqueColumnChosenAsPowerIsRefused() {
        assertThatThrownBy(() -> PullTable.read(
                        Tables.of("rpm;Torque Nm", "2000;43", "2050;44"), List.of(ColumnChoice.parse("power=Torque"))))
                .hasMessageContaining("is in N·m, which is a torque, not a power");
    }

    @Test
    void aFileWithoutHeaderIsRefused() {
        assertRefused("the file has no header row", "2000;43", "2050;44");
    }

    @Test
    void aHeaderWithoutFiguresIsRefused() {
        assertRefused("fewer than two rows below the header have figures for speed and power", "rpm;kW", "2000;43");
    }

    private static void assertRefused(String sentence, String... lines) {
        assertThatThrownBy(() -> read(lines))
                .isInstanceOf(UnreadablePullException.class)
                .hasMessageContaining(sentence);
    }

    private static PullTable read(String... lines) throws UnreadablePullException {
        return PullTable.read(Tables.of(lines), List.of());
    }
}
