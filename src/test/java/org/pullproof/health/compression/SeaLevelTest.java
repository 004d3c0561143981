package org.pullproof.health.compression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.pullproof.engine.Geometry;
import org.pullproof.units.Unit;

class SeaLevelTest {
    /** Army TM 5-3895-359-14&amp;P: readings scale with the air within 0.6 %. */
    @ParameterizedTest
    @CsvFileSource(resources = "altitude.csv")
    void restatedReadingsOfTheArmyTableAgree(double feet, double psi, double density) {
        double atTheFirst = SeaLevel.restated(515, 0.715);
        assertThat(SeaLevel.restated(psi, density) / atTheFirst).isCloseTo(1, within(0.006));
    }

    /** Table computed apart from this program; its file names the source. Printed to 1e-4 psi. */
    @ParameterizedTest
    @CsvFileSource(resources = "/org/pullproof/engine/dynamic-compression.csv")
    void expectedGaugeReadingAgreesWithTheTable(
            double bore,
            double stroke,
            double rod,
            double ratio,
            double closing,
            double effective,
            double exponent,
            double seaLevelPsi,
            double highPsi) {
        Geometry geometry = new Geometry(bore * 1e-3, stroke * 1e-3, rod * 1e-3, ratio, closing, false);
        assertThat(Unit.PSI.fromSi(SeaLevel.expected(geometry, 101_325, exponent)))
                .isCloseTo(seaLevelPsi, within(2e-4));
        assertThat(Unit.PSI.fromSi(SeaLevel.expected(geometry, 84_556, exponent)))
                .isCloseTo(highPsi, within(2e-4));
    }
}
