package org.pullproof.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.units.Pressure;
import org.pullproof.units.Temperature;

class MoistAirTest {
    private static final String GRID = "org.pullproof.weather.HumidAirGrid#";

    /** 40 CFR 1065.645(c), worked examples: 2.3371 kPa at 20 °C. */
    @Test
    void saturationAgreesWithTheFederalExampleAtTwentyDegrees() {
        assertThat(kPa(20)).isCloseTo(2.3371, within(0.00005));
    }

    /** 40 CFR 1065.645, worked example: a dew point of 9.5 °C is 1.186581 kPa. */
    @Test
    void vapourPressureOfADewPointAgreesWithTheFederalExample() {
        assertThat(kPa(9.5)).isCloseTo(1.186581, within(0.0000005));
    }

    /** 40 CFR 1065.645, worked example: dew point 9.5 °C at 99.980 kPa is 0.011868 mol/mol. */
    @Test
    void moleFractionFromDewPointAgreesWithTheFederalExample() {
        assertThat(kPa(9.5) / 99.980).isCloseTo(0.011868, within(0.0000005));
    }

    /** 40 CFR 1065.645, worked example: 50.77 % at 20 °C and 99.980 kPa is 0.011868 mol/mol too. */
    @Test
    void moleFractionFromHumidityAgreesWithTheFederalExample() {
        assertThat(0.5077 * kPa(20) / 99.980).isCloseTo(0.011868, within(0.0000005));
    }

    /** Wagner and Pruss over water, as tabled. The two formulas part below freezing, by 0.4 % at −30 °C. */
    @ParameterizedTest
    @CsvFileSource(resources = "saturation_pressure.csv", numLinesToSkip = 1)
    void saturationAgreesWithWagnerAndPrussOverWater(double celsius, String iapws, double wagnerPruss) {
        assertThat(kPa(celsius)).isCloseTo(wagnerPruss, within(wagnerPruss * 4e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-49, -10, 0, 9.5, 20, 60, 99})
    void dewPointOfSaturatedAirIsItsTemperature(double celsius) {
        Temperature air = Temperature.ofCelsius(celsius);
        assertThat(MoistAir.dewPoint(MoistAir.saturation(air)).orElseThrow().celsius())
                .isCloseTo(celsius, within(1e-5));
    }

    @Test
    void dryAirHasNoDewPoint() {
        assertThat(MoistAir.dewPoint(new Pressure(0))).isEmpty();
    }

    /** psychrolib: solved to 0.001 °C; another saturation formula moves a dew point by up to 0.018 °C. */
    @ParameterizedTest
    @MethodSource(GRID + "dewPoints")
    void dewPointAgreesWithPsychrolib(HumidAirGrid.Row row) {
        assertThat(MoistAir.dewPoint(row.air().vapour()).orElseThrow().celsius())
                .isCloseTo(row.dewPoint(), within(0.02));
    }

    /** Below freezing psychrolib has the frost point; the dew point of a weather report, over water, lies below it. */
    @ParameterizedTest
    @MethodSource(GRID + "frostPoints")
    void belowFreezingTheDewPointLiesBelowTheFrostPoint(HumidAirGrid.Row row) {
        Temperature frost = Temperature.ofCelsius(row.dewPoint());
        assertThat(MoistAir.dewPoint(row.air().vapour()))
                .hasValueSatisfying(dew -> assertThat(dew.kelvin()).isLessThan(frost.kelvin()));
    }

    /** psychrolib, density of moist air, every row; 0.05 % for another gas constant. */
    @ParameterizedTest
    @MethodSource(GRID + "rows")
    void densityAgreesWithPsychrolib(HumidAirGrid.Row row) {
        assertThat(MoistAir.density(row.air())).isCloseTo(row.density(), within(row.density() * 5e-4));
    }

    @ParameterizedTest
    @MethodSource(GRID + "rows")
    void theDryPartIsLighterThanTheWholeByItsVapour(HumidAirGrid.Row row) {
        double vapour = row.vapourKpa() * 1e3 / (461.495 * (row.celsius() + 273.15));
        assertThat(MoistAir.density(row.air()) - MoistAir.dryDensity(row.air())).isCloseTo(vapour, within(1e-9));
    }

    /** Density of dry air at the ISO 2533 sea level, 1.2250 kg/m³. */
    @Test
    void dryAirAtSeaLevelHasTheStandardDensity() {
        AirState air = new AirState(new Pressure(101325), new Pressure(0), Temperature.ofCelsius(15));
        assertThat(MoistAir.density(air)).isCloseTo(1.2250, within(0.00005));
    }

    @Test
    void saturationOutsideItsRangeIsRefused() {
        assertThatThrownBy(() -> MoistAir.saturation(Temperature.ofCelsius(120)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("120");
    }

    private static double kPa(double celsius) {
        return MoistAir.saturation(Temperature.ofCelsius(celsius)).kilopascal();
    }
}
