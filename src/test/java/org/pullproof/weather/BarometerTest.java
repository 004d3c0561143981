package org.pullproof.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

class BarometerTest {

    /** Every row of the table, as typed there; the exact ICAO form. */
    @ParameterizedTest
    @CsvFileSource(resources = "altimeter_station.csv", numLinesToSkip = 2)
    void anAltimeterSettingGivesTheStationPressureOfTheTable(
            String typed, String unit, double hPa, double metres, double smithsonian, double icao) {
        Barometer altimeter = new Barometer.Altimeter(pressure(typed + unit), Quantity.of(metres, Unit.M));
        assertThat(altimeter.station().pascal() / 100).isCloseTo(icao, within(2e-3)); // exponent printed to 5.25588
    }

    /** The same setting holds at both places: 95.461 kPa at 500 m is 101.325 kPa at 0 m and 89.875 kPa at 1000 m (ISO 2533). */
    @ParameterizedTest
    @CsvSource({"0, 101.325", "500, 95.461", "1000, 89.8746"})
    void aPressureReadElsewhereIsCarriedAlongTheStandardAtmosphere(double metres, double kPa) {
        Barometer there = new Barometer.Elsewhere(
                pressure("95.4608kPa"), Quantity.of("500", Unit.M), Quantity.of(metres, Unit.M));
        assertThat(there.station().kilopascal()).isCloseTo(kPa, within(1e-3));
    }

    @Test
    void aSeaLevelPressureIsTakenLikeASettingButLeftWider() {
        Quantity height = Quantity.of("1600", Unit.M);
        Barometer setting = new Barometer.Altimeter(pressure("1013.2hPa"), height);
        Barometer seaLevel = new Barometer.SeaLevel(pressure("1013.2hPa"), height);
        assertThat(seaLevel.station()).isEqualTo(setting.station());
        assertThat(width(seaLevel)).isGreaterThan(50 * width(setting));
    }

    /**
     * Worked by hand from p = p0 exp(−g h/(R T)): a column of 1600 m at 282.95 K, 20 K warmer or colder, changes the pressure by
     * 9.80665·1600·20/(287.053·282.95²) = 1.365 %.
     */
    @Test
    void aSeaLevelPressureIsAsUncertainAsTheColumnOfAirBelow() {
        Barometer seaLevel = new Barometer.SeaLevel(pressure("1013.250hPa"), Quantity.of("1600", Unit.M));
        double share = width(seaLevel) / seaLevel.station().pascal();
        assertThat(share).isCloseTo(0.01365, within(0.0001));
    }

    /** FMH-1 11.5.1 and WMO No. 306, 15.12: rounded down, so 29.92 stands for 29.92 to 29.93 and 1012 for 1012 to 1013. */
    @ParameterizedTest
    @CsvSource({"A2992, 29.92inHg, 29.925inHg, 29.93inHg", "Q1012, 1012hPa, 1012.5hPa, 1013hPa"})
    void theSettingOfAReportLiesInTheStepAboveItsFigure(String group, String low, String middle, String high) {
        Barometer report = report("XXXX 121151Z 25/10 " + group);
        assertThat(report.station(Side.LOW, Side.READ).pascal())
                .isCloseTo(pressure(low).si(), within(1e-6));
        assertThat(report.station().pascal()).isCloseTo(pressure(middle).si(), within(1e-6));
        assertThat(report.station(Side.HIGH, Side.READ).pascal())
                .isCloseTo(pressure(high).si(), within(1e-6));
    }

    @Test
    void aReportWithoutPressureIsRefusedByName() {
        assertThatThrownBy(() -> report("XXXX 121151Z 25/10 Q////"))
                .hasMessageStartingWith("The METAR has no pressure (A or Q group)");
    }

    @Test
    void aReportWithOnlyASeaLevelPressureSaysThatItMayBeTypedAsSuch() {
        assertThatThrownBy(() -> report("XXXX 121151Z 25/10 RMK SLP982"))
                .hasMessageContaining("it has a sea-level pressure of 998.2 hPa");
    }

    private static Barometer report(String text) {
        return new Barometer.Report(Metar.parse(text), Quantity.of("0", Unit.M));
    }

    private static double width(Barometer barometer) {
        return barometer.station(Side.HIGH, Side.READ).pascal()
                - barometer.station(Side.READ, Side.READ).pascal();
    }

    private static Quantity pressure(String text) {
        return Quantity.parse(text, Dimension.PRESSURE);
    }
}
