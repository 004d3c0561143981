package org.pullproof.health.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.engine.Geometry;
import org.pullproof.files.TradeConstants;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.leakdown.LeakTester;
import org.pullproof.session.Judgement;

/**
 * What one hole does to both tests: typical figures computed apart from this program, from the same formulas, for bore and stroke
 * 86 mm, ratio 10, 200 rpm, 90 psi behind 1.0 mm; printed to whole percent.
 */
class OneHoleInACylinderTest {
    private static final FaultConstants CONSTANTS = new TradeConstants().faults(Judgement.own());
    private static final Geometry SQUARE = new Geometry(0.086, 0.086, 0.140, 10, 58, false);
    private static final Areas AREAS = new Areas(0.02, 60, 32);
    private static final GaugeTest USUAL = new GaugeTest(101_325, 200, 5);

    private static double compression(double areaMm2) {
        return new CrankedCylinder(SQUARE, USUAL, 0, CONSTANTS.cranking())
                .crank(areaMm2)
                .last();
    }

    @ParameterizedTest
    @CsvSource({"0.4, 7, 100", "0.8, 23, 95", "1.2, 42, 90", "2.0, 71, 81", "3.0, 86, 71", "5.0, 95, 55", "8.0, 98, 38"
    })
    void aLargeLeakGoesWithASmallLossOfCompression(double areaMm2, double leakPercent, double percentOfTight) {
        LeakTable leak = new LeakTable(LeakTester.withRestrictor(90 * 6894.757, 0.001, 101_325), AREAS, 0.82, 295);
        assertThat(leak.percent(areaMm2)).isCloseTo(leakPercent, within(1.0));
        assertThat(100 * compression(areaMm2) / compression(0.4)).isCloseTo(percentOfTight, within(1.0));
    }

    /** Army TM 5-3895-359-14&P: readings scale with the air; here exactly, by dimensions, but for the leak. */
    @Test
    void aTightCylinderReadsInProportionToTheAir() {
        double high = new CrankedCylinder(SQUARE, new GaugeTest(77_600, 200, 5), 0, CONSTANTS.cranking())
                .crank(0)
                .last();
        assertThat(high / compression(0)).isCloseTo(77_600 / 101_325.0, within(1e-9));
    }

    @Test
    void theGaugeKeepsItsHighest() {
        CrankedCylinder.Shown shown = new CrankedCylinder(SQUARE, USUAL, 0, CONSTANTS.cranking()).crank(2);
        assertThat(shown.last()).isGreaterThan(shown.first());
    }

    @Test
    void oilThatTakesRoomRaisesCompression() {
        double wet = new CrankedCylinder(SQUARE, USUAL, 4.5, CONSTANTS.cranking())
                .crank(0.4)
                .last();
        assertThat(wet).isGreaterThan(1.03 * compression(0.4));
    }

    @Test
    void theTableIsHeldBeyondItsEnds() {
        CompressionTable table = new CompressionTable(SQUARE, USUAL, 0, AREAS, CONSTANTS.cranking());
        assertThat(table.lnLast(0.001)).isEqualTo(table.lnLast(0.02));
        assertThat(table.lnLast(100)).isEqualTo(table.lnLast(60));
    }

    /** P_φ = φ (P + p_a) − p_a. */
    @Test
    void halfAFillingGivesLessThanHalfTheGaugeReading() {
        CompressionTable table = new CompressionTable(SQUARE, USUAL, 0, AREAS, CONSTANTS.cranking());
        double whole = Math.exp(table.lnLast(0.45));
        assertThat(Math.exp(table.lnLast(0.45, 0.5))).isCloseTo((whole - 101_325) / 2, within(1.0));
    }
}
