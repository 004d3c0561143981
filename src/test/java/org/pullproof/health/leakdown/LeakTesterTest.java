package org.pullproof.health.leakdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Unit;

class LeakTesterTest {
    private static final double AIR_AROUND = 101_325;

    private static double area(double inch) {
        double diameter = Unit.IN.toSi(inch);
        return Math.PI / 4 * diameter * diameter;
    }

    /** Table solved with scipy; its file names the source. Printed to 1e-5 psi. */
    @ParameterizedTest
    @CsvFileSource(resources = "two-nozzles.csv")
    void readingOnALeakAgreesWithTheTable(double supply, double restrictor, double leak, double reading) {
        LeakTester tester = new LeakTester(Unit.PSI.toSi(supply), area(restrictor), AIR_AROUND);
        assertThat(Unit.PSI.fromSi(tester.reading(area(leak)))).isCloseTo(reading, within(1e-5));
    }

    /** The same table: leakage in percent. */
    @ParameterizedTest
    @CsvFileSource(resources = "two-nozzles.csv")
    void percentageOfALeakAgreesWithTheTable(
            double supply, double restrictor, double leak, double reading, double percent) {
        LeakTester tester = new LeakTester(Unit.PSI.toSi(supply), area(restrictor), AIR_AROUND);
        assertThat(tester.percent(tester.reading(area(leak)))).isCloseTo(percent, within(1e-5));
    }

    /** The same table backwards: from the reading to the leak. Readings near the supply say little of a small leak. */
    @ParameterizedTest
    @CsvFileSource(resources = "two-nozzles.csv")
    void leakAreaAgreesWithTheTable(double supply, double restrictor, double leak, double reading) {
        LeakTester tester = new LeakTester(Unit.PSI.toSi(supply), area(restrictor), AIR_AROUND);
        double roundingShare = 1e-5 / (supply - reading);
        assertThat(tester.leakArea(Unit.PSI.toSi(reading)) / area(leak)).isCloseTo(1, within(roundingShare + 1e-6));
    }

    /** FAA AC 43.13-1B change 1, 80 psi and 0.040 in: a leak as large as the restrictor reads 61.767 psi, 22.79 %. */
    @Test
    void aLeakAsLargeAsTheReferenceRestrictorReadsAsPublished() {
        LeakTester reference = LeakTester.reference(Unit.IN.toSi(4), AIR_AROUND);
        double reading = reference.reading(area(0.040));
        assertThat(Unit.PSI.fromSi(reading)).isCloseTo(61.767, within(0.0005));
        assertThat(reference.percent(reading)).isCloseTo(22.79, within(0.005));
    }

    /** FAASTeam tip, November 2011: 0.040 in below 5.00 in of bore, 0.060 in from there. */
    @ParameterizedTest
    @CsvSource({"4.99, 0.040", "5.00, 0.060", "5.25, 0.060"})
    void theReferenceRestrictorGoesByTheBore(double boreInch, double restrictorInch) {
        assertThat(LeakTester.reference(Unit.IN.toSi(boreInch), AIR_AROUND).restrictorArea())
                .isCloseTo(area(restrictorInch), within(1e-12));
    }

    @Test
    void noLossIsNoLeak() {
        assertThat(LeakTester.reference(0.1, AIR_AROUND).leakArea(Unit.PSI.toSi(80)))
                .isZero();
    }

    @Test
    void aReadingAboveTheSupplyIsRefused() {
        LeakTester tester = LeakTester.reference(0.1, AIR_AROUND);
        assertThatThrownBy(() -> tester.percent(Unit.PSI.toSi(81))).hasMessageContaining("0 to the supply");
    }
}
