package org.pullproof.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class CrankGeometryTest {
    /** Table by 30-digit numerical differentiation; its file names the source. Printed to 12 digits. */
    @ParameterizedTest
    @CsvFileSource(resources = "slider-crank.csv")
    void pistonPlaceAgreesWithTheTable(double stroke, double rod, double rpm, double degrees, double fromTop) {
        assertThat(new CrankGeometry(stroke * 1e-3, rod * 1e-3).pistonFromTop(degrees) * 1e3)
                .isCloseTo(fromTop, within(1e-9));
    }

    /** Velocity of the same table divided by the speed of the crank. */
    @ParameterizedTest
    @CsvFileSource(resources = "slider-crank.csv")
    void pistonRateAgreesWithTheTable(
            double stroke, double rod, double rpm, double degrees, double fromTop, double velocity) {
        double radiansPerSecond = rpm * Math.PI / 30;
        assertThat(new CrankGeometry(stroke * 1e-3, rod * 1e-3).pistonRate(degrees) * radiansPerSecond)
                .isCloseTo(velocity, within(1e-9));
    }

    /** Table computed apart from this program; its file names the source. Printed to 7 digits. */
    @ParameterizedTest
    @CsvFileSource(resources = "dynamic-compression.csv")
    void effectiveRatioAgreesWithTheTable(
            double bore, double stroke, double rod, double ratio, double closing, double effective) {
        Geometry geometry = new Geometry(bore * 1e-3, stroke * 1e-3, rod * 1e-3, ratio, closing, false);
        assertThat(geometry.effectiveRatio()).isCloseTo(effective, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-725, -10, 350, 710})
    void aPistonStandsTheSameBeforeAndAfterTopDeadCentre(double degrees) {
        CrankGeometry crank = new CrankGeometry(0.088, 0.145);
        assertThat(crank.pistonFromTop(degrees)).isCloseTo(crank.pistonFromTop(-degrees), within(1e-15));
    }

    @Test
    void aRodShorterThanHalfTheStrokeIsRefused() {
        assertThatThrownBy(() -> new CrankGeometry(0.088, 0.044)).hasMessageContaining("longer than half the stroke");
    }
}
