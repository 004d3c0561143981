package org.pullproof.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.units.Pressure;
import org.pullproof.units.Temperature;

class PsychrometerTest {
    private static final String GRID = "org.pullproof.weather.HumidAirGrid#";

    /**
     * ASHRAE Handbook, Fundamentals 2017, chapter 1, example 1: 40 °C, wet bulb 20 °C, 101.325 kPa give a humidity ratio of 0.0065, a
     * dew point of 7 °C and 14 %. It is solved on a chart: read to 0.0001 or so, whole degrees and percents.
     */
    @Test
    void theHandbooksExampleIsMet() {
        AirState air = air(101.325, 40, 20);
        assertThat(ratio(air)).isCloseTo(0.0065, within(0.00015));
        assertThat(MoistAir.relativeHumidity(air)).isCloseTo(0.14, within(0.005));
        assertThat(MoistAir.dewPoint(air.vapour()).orElseThrow().celsius()).isCloseTo(7, within(0.5));
    }

    /**
     * ASHRAE spreadsheet, 30 °C with a wet bulb of 25 °C at 95 461 Pa: humidity ratio 0.0192281274; another saturation formula moves
     * it by 0.2 %.
     */
    @Test
    void theHandbooksSpreadsheetIsMet() {
        assertThat(ratio(air(95.461, 30, 25))).isCloseTo(0.0192281274, within(0.0192 * 2e-3));
    }

    /** Solved there to 0.001 °C; another saturation formula moves a wet bulb by up to 0.016 °C. */
    @ParameterizedTest
    @MethodSource(GRID + "wetWicks")
    void theWetBulbAgreesWithPsychrolib(HumidAirGrid.Row row) {
        assertThat(Psychrometer.wetBulb(row.air()).celsius()).isCloseTo(row.wetBulb(), within(0.02));
    }

    /** There the wick is frozen, here never: within 0.7 °C of each other down to −19 °C. */
    @ParameterizedTest
    @MethodSource(GRID + "frozenWicks")
    void belowFreezingTheWetBulbIsNearThatOfAFrozenWick(HumidAirGrid.Row row) {
        assertThat(Psychrometer.wetBulb(row.air()).celsius()).isCloseTo(row.wetBulb(), within(0.7));
    }

    @ParameterizedTest
    @MethodSource(GRID + "unsaturated")
    void theVapourOfAWetBulbIsThatOfTheAirItWasMadeFrom(HumidAirGrid.Row row) {
        AirState air = row.air();
        double vapour = Psychrometer.vapourPascal(air.pressure(), air.temperature(), Psychrometer.wetBulb(air));
        assertThat(vapour)
                .isCloseTo(air.vapour().pascal(), within(0.01)); // the wet bulb is solved to a millionth of a degree
    }

    @ParameterizedTest
    @CsvSource({"-10", "5", "25", "40"})
    void inSaturatedAirTheWetBulbIsTheTemperature(double celsius) {
        Temperature temperature = Temperature.ofCelsius(celsius);
        Pressure total = Pressure.ofKilopascal(100);
        AirState air = new AirState(total, MoistAir.saturation(temperature), temperature);
        assertThat(Psychrometer.wetBulb(air).celsius()).isCloseTo(celsius, within(1e-5));
    }

    private static AirState air(double kPa, double celsius, double wetCelsius) {
        Pressure total = Pressure.ofKilopascal(kPa);
        Temperature air = Temperature.ofCelsius(celsius);
        double vapour = Psychrometer.vapourPascal(total, air, Temperature.ofCelsius(wetCelsius));
        return new AirState(total, new Pressure(vapour), air);
    }

    private static double ratio(AirState air) {
        return Psychrometer.MASS_RATIO * air.vapour().pascal() / air.dry().pascal();
    }
}
