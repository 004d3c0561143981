package org.pullproof.health.leakdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.pullproof.units.Unit;

class NozzleTest {
    private static final double AIR_AROUND = 101_325;

    /** 40 CFR 1065.640: β = 0, γ = 1.399, choked gives 0.6846. */
    @Test
    void chokedFlowAgreesWithTheFederalExample() {
        assertThat(Nozzle.flowCoefficient(0, 0, 1.399)).isCloseTo(0.6846, within(0.00005));
    }

    /** 40 CFR 1065.640, subsonic venturi: r = 0.97668, β = 0.8, γ = 1.399 gives 0.274. */
    @Test
    void subsonicFlowAgreesWithTheFederalExample() {
        assertThat(Nozzle.flowCoefficient(0.97668, 0.8, 1.399)).isCloseTo(0.274, within(0.0005));
    }

    /** NACA Report 1135: critical pressure over stagnation pressure is 0.5283. */
    @Test
    void criticalRatioOfAirAgreesWithNaca() {
        assertThat(Nozzle.criticalRatio(1.4)).isCloseTo(0.5283, within(0.00005));
    }

    /**
     * NACA Report 1135: below Mach 1 the flow through one area is the choked flow divided by the printed area ratio. The pressure ratio is printed to
     * 6 digits; at low speed the flow goes with the root of 1 − p/pt, so the tolerance grows there.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "naca-1135.csv")
    void flowBelowSonicSpeedAgreesWithNaca(double mach, double pressureRatio, String areaRatio) {
        double choked = Nozzle.flowCoefficient(0, 0, 1.4);
        double expected = mach >= 1 ? 1 : areaRatio.equals("inf") ? 0 : 1 / Double.parseDouble(areaRatio);
        double tolerance = 5e-7 + 5e-7 / Math.max(mach, 0.01);
        assertThat(Nozzle.flowCoefficient(pressureRatio, 0, 1.4) / choked).isCloseTo(expected, within(tolerance));
    }

    /** Table computed apart from this program; its file names the source. Printed to 1e-6 g/s. */
    @ParameterizedTest
    @CsvFileSource(resources = "nozzle-flow.csv")
    void flowThroughAnOrificeAgreesWithTheTable(double inch, double upstreamPsi, double downstreamPsi, double gram) {
        double diameter = Unit.IN.toSi(inch);
        double flow = Nozzle.airFlow(
                Math.PI / 4 * diameter * diameter,
                Unit.PSI.toSi(upstreamPsi) + AIR_AROUND,
                Unit.PSI.toSi(downstreamPsi) + AIR_AROUND,
                293.15);
        assertThat(flow * 1e3).isCloseTo(gram, within(1e-6));
    }

    /** The same table: at and below its critical pressure the flow no longer grows. */
    @ParameterizedTest
    @CsvFileSource(resources = "nozzle-flow.csv")
    void flowIsChokedBelowTheCriticalPressureOfTheTable(
            double inch, double upstreamPsi, double downstreamPsi, double gram, double criticalPsi) {
        double upstream = Unit.PSI.toSi(upstreamPsi) + AIR_AROUND;
        double critical = Unit.PSI.toSi(criticalPsi) + AIR_AROUND;
        assertThat(critical / upstream).isCloseTo(Nozzle.criticalRatio(1.4), within(1e-5));
    }

    @Test
    void flowAgainstThePressureIsRefused() {
        assertThatThrownBy(() -> Nozzle.airFlow(1e-6, 1e5, 2e5, 293)).hasMessageContaining("ratio is 0 to 1");
    }
}
