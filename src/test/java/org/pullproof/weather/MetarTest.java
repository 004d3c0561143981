package org.pullproof.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

class MetarTest {
    /** Every string there, decoded by three independent parsers; see the head of the file. */
    @ParameterizedTest
    @CsvFileSource(resources = "metar-cases.csv", numLinesToSkip = 3, maxCharsPerColumn = 2000)
    void aReportTellsWhatThreeParsersReadInIt(
            String text,
            String origin,
            @Nullable Double temperature,
            @Nullable Double dewPoint,
            @Nullable Double temperatureTenths,
            @Nullable Double dewPointTenths,
            @Nullable Double hectopascal,
            @Nullable Double inches) {
        Metar report = Metar.parse(text);
        assertThat(report.temperature().map(t -> t.in(Unit.CELSIUS)).orElse(null))
                .isEqualTo(temperatureTenths == null ? temperature : temperatureTenths);
        assertThat(report.dewPoint().map(t -> t.in(Unit.CELSIUS)).orElse(null))
                .isEqualTo(dewPointTenths == null ? dewPoint : dewPointTenths);
        assertThat(report.altimeter()
                        .map(setting -> setting.figure().doubleValue())
                        .orElse(null))
                .isEqualTo(inches == null ? hectopascal : inches);
    }

    /** WMO No. 306, 15.12 note 2: 29.91 → A2991; 15.12.1: 995.6 → Q0995. FMH-1 12.7.1.v: 998.2 → SLP982. */
    @ParameterizedTest
    @CsvSource({"A2991, 29.91 inHg", "Q0995, 995 hPa"})
    void theSettingKeepsItsUnit(String group, String setting) {
        assertThat(Metar.parse("XXXX 121151Z 25/10 " + group).altimeter().map(Quantity::toString))
                .contains(setting);
    }

    @Test
    void theSeaLevelPressureOfTheRemarksIsNoAltimeterSetting() {
        Metar report = Metar.parse("XXXX 121151Z 25/10 RMK SLP982");
        assertThat(report.seaLevelPressure().map(Quantity::toString)).contains("998.2 hPa");
        assertThat(report.altimeter()).isEmpty();
    }

    /** FMH-1 12.7.2.d: 2.6 and −1.5 → T00261015 in the remarks and 03/M01 in the body. */
    @Test
    void tenthsInTheRemarksWinOverWholeDegrees() {
        Metar report = Metar.parse("XXXX 121151Z 03/M01 A2992 RMK T00261015");
        assertThat(report.temperature().map(t -> t.in(Unit.CELSIUS))).contains(2.6);
        assertThat(report.dewPoint().map(t -> t.in(Unit.CELSIUS))).contains(-1.5);
    }

    /** FMH-1 12.6.10: a missing dew point is coded "02/". */
    @Test
    void aMissingDewPointIsSaidByName() {
        Metar report = Metar.parse("XXXX 121151Z 02/ A2992");
        assertThat(report.temperature().map(t -> t.in(Unit.CELSIUS))).contains(2.0);
        assertThat(report.missing()).containsExactly("dew point");
    }

    @Test
    void aTextWithoutGroupsMissesEverything() {
        assertThat(Metar.parse("good morning").missing())
                .containsExactly("pressure (A or Q group)", "temperature", "dew point");
    }

    /** A report that is corrected, automatic, or ends with an equals sign reads the same. */
    @ParameterizedTest
    @ValueSource(strings = {"METAR COR XXXX 121151Z", "XXXX 121151Z AUTO", "SPECI XXXX 121151Z COR"})
    void theHeadOfTheReportDoesNotMatter(String head) {
        Metar report = Metar.parse(head + " 25/10 A2992=");
        assertThat(report.missing()).isEmpty();
        assertThat(report.altimeter().map(Quantity::toString)).contains("29.92 inHg");
    }

    /** WMO No. 306, 15.11: below zero M stands before the figure, and −0.5 is coded M00. */
    @ParameterizedTest
    @CsvSource({"M05/M12, -5, -12", "M00/M01, 0, -1", "00/M00, 0, 0"})
    void minusIsCodedAsM(String group, double temperature, double dewPoint) {
        Metar report = Metar.parse("XXXX 121151Z " + group + " Q1012");
        assertThat(report.temperature().orElseThrow().in(Unit.CELSIUS)).isEqualTo(temperature);
        assertThat(report.dewPoint().orElseThrow().in(Unit.CELSIUS)).isEqualTo(dewPoint);
    }

    @Test
    void aNovelIsRefused() {
        assertThatThrownBy(() -> Metar.parse("A2992 ".repeat(1000))).hasMessageContaining("at most 1000 characters");
    }
}
