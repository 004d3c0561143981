package org.pullproof.health.leakdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Unit;

class OneHoleTest {
    private final OneHole hole = new OneHole(2.2, 5);

    /** The method's own worked figures: 90 psi behind 1.0 mm, compression beside a tight cylinder [O]. */
    @ParameterizedTest
    @CsvSource({"0.4, 7, 100", "0.8, 23, 95", "1.2, 42, 90", "2.0, 71, 81", "3.0, 86, 71", "5, 95, 55", "8, 98, 38"})
    void aLargeLeakGoesWithASmallLossOfCompression(double area, double percent, double compression) {
        LeakTester tester = LeakTester.withRestrictor(Unit.PSI.toSi(90), 1e-3, LeakTester.STANDARD_AIR);
        assertThat(tester.percent(tester.reading(area * 1e-6))).isCloseTo(percent, within(0.8));
        assertThat(OneHole.percentOfTight(area)).isCloseTo(compression, within(1e-9));
    }

    @Test
    void betweenTheFiguresCompressionFalls() {
        assertThat(OneHole.percentOfTight(2.5)).isBetween(71.0, 81.0);
        assertThat(OneHole.percentOfTight(0.1)).isEqualTo(100);
        assertThat(OneHole.percentOfTight(20)).isEqualTo(38);
    }

    /** 93 % beside 62 % of the others is one hole; 62 % beside 56 % is not. */
    @Test
    void aCompressionFarBelowWhatTheHoleDoesIsNotExplained() {
        assertThat(hole.explains(4.2, 62)).isTrue();
        assertThat(hole.explains(1.72, 56)).isFalse();
    }

    @Test
    void aLevelCompressionBesideALargeLeakIsNotExplained() {
        assertThat(hole.explains(4.2, 100)).isFalse();
        assertThat(hole.explains(0.9, 100)).isTrue();
    }
}
