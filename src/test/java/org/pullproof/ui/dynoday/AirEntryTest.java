package org.pullproof.ui.dynoday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.ui.dynoday.AirEntry.MoistureForm;
import org.pullproof.ui.dynoday.AirEntry.Part;
import org.pullproof.ui.dynoday.AirEntry.PressureForm;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.TypedAir;

class AirEntryTest {
    private static final Figures METRIC = new Figures(UnitSystem.METRIC);
    private static final String REPORT = "XXXX 121151Z 24016G28KT 10SM 25/10 Q1012";

    private final AirEntry entry = new AirEntry(new AirCheck(), () -> Optional.of(Quantity.of("20", Unit.M)));

    private void type(Part part, String text) {
        entry.take(part, text, METRIC);
    }

    private String words() {
        return entry.air().map(TypedAir::words).orElse("");
    }

    @ParameterizedTest
    @CsvSource({
        "STATION, station pressure 101.3 kPa",
        "ALTIMETER, altimeter setting 101.3 kPa at 20 m",
        "SEA_LEVEL, sea-level pressure 101.3 kPa at 20 m"
    })
    void thePressureIsTakenAsWhatItWasSaidToBe(PressureForm form, String words) {
        entry.choose(form);
        type(Part.PRESSURE, "101.3");
        type(Part.TEMPERATURE, "27");
        type(Part.HUMIDITY, "55");
        assertThat(words()).isEqualTo(words + ", 27 °C, humidity 55 %");
    }

    @ParameterizedTest
    @CsvSource({"HUMIDITY, 55, humidity 55 %", "DEW_POINT, 17, dew point 17 °C", "WET_BULB, 20, wet bulb 20 °C"})
    void theMoistureIsTakenAsWhatItWasSaidToBe(MoistureForm form, String typed, String words) {
        entry.choose(form);
        type(Part.PRESSURE, "101.3");
        type(Part.TEMPERATURE, "27");
        type(Part.HUMIDITY, typed);
        assertThat(words()).endsWith(words);
    }

    @Test
    void moistureThatIsNotKnownNeedsNoFigure() {
        entry.choose(MoistureForm.UNKNOWN);
        type(Part.PRESSURE, "101.3");
        type(Part.TEMPERATURE, "27");
        assertThat(words()).endsWith("humidity not known, 20 to 90 %");
    }

    @Test
    void aReportBringsItsOwnMoistureAndTheIntakeTemperatureIsTyped() {
        entry.choose(PressureForm.METAR);
        type(Part.PRESSURE, REPORT);
        type(Part.TEMPERATURE, "32");
        assertThat(words()).isEqualTo("METAR, altimeter setting 1012 hPa at 20 m, 32 °C, dew point 10 °C of the METAR");
    }

    @Test
    void withoutAnIntakeTemperatureThatOfTheReportStandsAndIsNamed() {
        entry.choose(PressureForm.METAR);
        type(Part.PRESSURE, REPORT);
        assertThat(words()).contains("25 °C of the METAR, not read at the intake, ± 5 °C");
    }

    @Test
    void aReportWithoutPressureIsRefusedAndAsksForOne() {
        entry.choose(PressureForm.METAR);
        assertThatThrownBy(() -> type(Part.PRESSURE, "good morning"))
                .hasMessageContaining("no pressure (A or Q group)");
        assertThat(entry.waitsFor()).contains("Waits for the METAR.");
    }

    @Test
    void anotherFormOfPressureAsksForItsFigureAgain() {
        type(Part.PRESSURE, "101.3");
        entry.choose(PressureForm.ALTIMETER);
        assertThat(entry.waitsFor()).contains("Waits for the altimeter setting.");
    }

    @Test
    void aSettingWithoutElevationWaitsForIt() {
        AirEntry nowhere = new AirEntry(new AirCheck(), Optional::empty);
        nowhere.choose(PressureForm.ALTIMETER);
        nowhere.take(Part.PRESSURE, "101.3", METRIC);
        assertThat(nowhere.waitsFor()).contains("Waits for the elevation.");
        nowhere.take(Part.ELEVATION, "600", METRIC);
        assertThat(nowhere.waitsFor()).contains("Waits for the temperature.");
    }

    /** ISO 2533: 94.3 kPa is usual at 600 m, 101.3 kPa at 20 m: the dyno may stand higher than the garage. */
    @Test
    void anElevationTypedComesBeforeThatOfTheGarage() {
        type(Part.ELEVATION, "600");
        assertThatThrownBy(() -> type(Part.PRESSURE, "101.3")).hasMessageContaining("looks like an altimeter setting");
        assertThat(entry.lookalike())
                .hasValueSatisfying(likeness -> assertThat(likeness.refused()).isTrue());
    }

    /** ISO 2533: 101 085 Pa at 20 m and 97 539 Pa at 320 m in the standard atmosphere, a ratio of 1.036 36. */
    @Test
    void aPressureReadElsewhereIsBroughtToTheHeightOfTheEngine() {
        entry.choose(PressureForm.ELSEWHERE);
        type(Part.PRESSURE, "97.5");
        assertThat(entry.waitsFor()).contains("Waits for the elevation of the place where it was read.");
        type(Part.READ_AT, "320");
        type(Part.TEMPERATURE, "15");
        type(Part.HUMIDITY, "50");

        assertThat(words()).startsWith("station pressure 97.5 kPa read at 320 m, used at 20 m");
        double pascal = entry.air().orElseThrow().barometer().station().pascal();
        assertThat(pascal).isCloseTo(97_500 * 1.03636, org.assertj.core.api.Assertions.within(60.0));
    }

    @Test
    void anElevationIsJudgedByItself() {
        type(Part.ELEVATION, "1600");
        assertThatThrownBy(() -> type(Part.ELEVATION, "16000")).hasMessageContaining("not an elevation with roads");
    }

    @Test
    void aWetBulbAboveTheTemperatureIsRefusedAtItsOwnField() {
        type(Part.PRESSURE, "101.3");
        type(Part.TEMPERATURE, "20");
        entry.choose(MoistureForm.WET_BULB);
        assertThatThrownBy(() -> type(Part.HUMIDITY, "25")).hasMessageContaining("a wet wick is never warmer");
    }
}
