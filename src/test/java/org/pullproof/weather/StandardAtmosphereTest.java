package org.pullproof.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Pressure;

class StandardAtmosphereTest {

    /** ISO 2533, cross-checked with fluids 1.0.22; the digits printed there. */
    @ParameterizedTest
    @CsvFileSource(resources = "isa_metric.csv", numLinesToSkip = 1)
    void pressureAgreesWithTheStandard(double metres, double geometric, double kelvin, double hPa) {
        assertThat(StandardAtmosphere.pressureAt(metres).pascal() / 100).isCloseTo(hPa, within(1e-4));
    }

    /** The same in feet, geopotential; the digits printed there. */
    @ParameterizedTest
    @CsvFileSource(resources = "isa_feet.csv", numLinesToSkip = 2)
    void pressureAgreesWithTheStandardInFeet(
            double feet, double celsius, double fahrenheit, double inches, double hPa) {
        assertThat(StandardAtmosphere.pressureAt(feet * 0.3048).pascal() / 100).isCloseTo(hPa, within(1e-4));
    }

    /** ASHRAE Handbook, Fundamentals 2017, chapter 1, table 1. It rounds to 1 Pa by a form good to some pascal. */
    @ParameterizedTest
    @CsvSource({"-500, 107478", "0, 101325", "500, 95461", "1000, 89875", "4000, 61640"})
    void pressureAgreesWithTheHandbook(double metres, double pascal) {
        assertThat(StandardAtmosphere.pressureAt(metres).pascal()).isCloseTo(pascal, within(5.0));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "isa_metric.csv", numLinesToSkip = 1)
    void pressureAltitudeInvertsThePressure(double metres, double geometric, double kelvin, double hPa) {
        assertThat(StandardAtmosphere.pressureAltitude(new Pressure(hPa * 100))).isCloseTo(metres, within(0.01));
    }

    /** The exact ICAO form of the table: 836.2549 hPa for 1013 hPa at 1588 m, as a published test has it. */
    @ParameterizedTest
    @CsvFileSource(resources = "altimeter_station.csv", numLinesToSkip = 1)
    void stationPressureIsTheExactIcaoForm(
            String typed, String unit, double setting, double metres, double smithsonian, double icao) {
        assertThat(StandardAtmosphere.station(new Pressure(setting * 100), metres)
                                .pascal()
                        / 100)
                .isCloseTo(icao, within(2e-3)); // the setting is printed to 0.00001 hPa, the exponent to 5.25588
    }

    /** NWS formula of density altitude, another derivation: within about 20 ft. */
    @ParameterizedTest
    @CsvFileSource(resources = "density_altitude.csv", numLinesToSkip = 1)
    void densityAltitudeAgreesWithTheWeatherServiceWithinTwentyFeet(
            double celsius, double hPa, double dew, double e, double tv, double pa, double feet, double density) {
        assertThat(StandardAtmosphere.densityAltitude(density) / 0.3048).isCloseTo(feet, within(20.0));
    }

    /** Inversion of the ISO 2533 density, done elsewhere; density is printed to six digits. */
    @ParameterizedTest
    @CsvFileSource(resources = "density_altitude.csv", numLinesToSkip = 1)
    void densityAltitudeAgreesWithTheInversion(
            double celsius,
            double hPa,
            double dew,
            double e,
            double tv,
            double pa,
            double feet,
            double density,
            double metres) {
        assertThat(StandardAtmosphere.densityAltitude(density)).isCloseTo(metres, within(0.3));
    }

    @Test
    void aHeightOutsideTheTroposphereIsRefused() {
        assertThatThrownBy(() -> StandardAtmosphere.pressureAt(12000)).hasMessageContaining("12000");
    }
}
