package org.pullproof.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Factors: NIST SP 811 (2008), appendix B.8, with the digits printed there. */
class SiValuesTest {
    /** Horsepower (550 ft lbf/s): 7.456 999 E+02 W. */
    @Test
    void horsepowerBecomesWattAndBack() {
        assertThat(Power.ofHorsepower(1).watt()).isCloseTo(745.6999, within(5e-5));
        assertThat(new Power(745.6999).horsepower()).isCloseTo(1, within(1e-7));
    }

    @Test
    void aKilowattIsAThousandWatt() {
        assertThat(Power.ofKilowatt(2.5).watt()).isEqualTo(2500);
        assertThat(new Power(2500).kilowatt()).isEqualTo(2.5);
    }

    @Test
    void powerMayBeNegativeWhileCoasting() {
        assertThat(new Power(-10).watt()).isEqualTo(-10);
    }

    /** Pound-force per square inch: 6.894 757 E+03 Pa. Inch of mercury, conventional: 3.386 389 E+03 Pa. */
    @Test
    void aPressureIsToldInAnyUnit() {
        assertThat(new Pressure(6894.757).in(Unit.PSI)).isCloseTo(1, within(1e-7));
        assertThat(new Pressure(3386.389).in(Unit.INHG)).isCloseTo(1, within(1e-6));
        assertThat(Pressure.ofKilopascal(98.2).pascal()).isCloseTo(98_200, within(1e-9));
        assertThat(new Pressure(98_200).kilopascal()).isEqualTo(98.2);
        assertThat(new Pressure(0).pascal()).isZero();
    }

    /** T/K = t/°C + 273.15: NIST SP 811, section B.9. */
    @Test
    void celsiusBecomesKelvinAndBack() {
        assertThat(Temperature.ofCelsius(20).kelvin()).isCloseTo(293.15, within(1e-9));
        assertThat(new Temperature(293.15).celsius()).isCloseTo(20, within(1e-9));
        assertThat(new Temperature(0).kelvin()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsNoValue(double none) {
        assertThatThrownBy(() -> new Power(none)).hasMessageStartingWith("A power is finite");
        assertThatThrownBy(() -> new Pressure(none)).hasMessageStartingWith("A pressure is finite");
        assertThatThrownBy(() -> new Temperature(none)).hasMessageStartingWith("A temperature is finite");
    }

    @Test
    void belowNothingThereIsNoPressureAndNoTemperature() {
        assertThatThrownBy(() -> new Pressure(-0.1)).hasMessageContaining("not negative");
        assertThatThrownBy(() -> new Temperature(-0.1)).hasMessageContaining("not below 0 K");
    }
}
