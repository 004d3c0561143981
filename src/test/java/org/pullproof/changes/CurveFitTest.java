package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against s2_curve: invented pulls A3 B3 A3 over 19 speeds; expected values computed with R, 6 decimals. */
class CurveFitTest {
    private static final double PRINTED = 1e-5;
    private static final Table EXPECTED = Table.read("s2_curve.expected.csv");
    private static final int[] GRID =
            IntStream.rangeClosed(12, 30).map(i -> 200 * i).toArray();

    @Test
    void lengthsAndTheCriticalFactorAgreeWithR() {
        CurveFit fit = curves();
        assertThat(fit.measuredLength())
                .isCloseTo(EXPECTED.number("value", "key", "kappa_hat", "rpm", ""), within(PRINTED));
        assertThat(fit.assumedLength()).isCloseTo(EXPECTED.number("value", "key", "kappa", "rpm", ""), within(PRINTED));
        assertThat(fit.critical()).isCloseTo(EXPECTED.number("value", "key", "c90", "rpm", ""), within(PRINTED));
    }

    @ParameterizedTest
    @ValueSource(strings = {"diff", "se", "lo", "hi"})
    void everySpeedAgreesWithR(String key) {
        CurveFit fit = curves();
        for (int bin = 0; bin < GRID.length; bin++) {
            double expected = EXPECTED.number("value", "key", key, "rpm", String.valueOf(GRID[bin]));
            assertEquals(expected, value(fit, key, bin), PRINTED, key + " at " + GRID[bin]);
        }
    }

    private static double value(CurveFit fit, String key, int bin) {
        Estimate at = fit.difference(bin, 1, 0);
        double half = fit.critical() * at.standardError();
        return switch (key) {
            case "diff" -> at.difference();
            case "se" -> at.standardError();
            case "lo" -> at.difference() - half;
            case "hi" -> at.difference() + half;
            default -> throw new IllegalArgumentException(key);
        };
    }

    /** s2_curve.expected.csv: gain_region 3400-4200. */
    @Test
    void theRegionOfTheGainIsThatOfR() {
        assertThat(curves().compare(1, 0).regions()).containsExactly(new CurveBand.Region(3400, 4200, 1));
    }

    @Test
    void theOtherWayRoundTheRegionIsALoss() {
        assertThat(curves().compare(0, 1).regions()).containsExactly(new CurveBand.Region(3400, 4200, -1));
    }

    /** Section 8 of the method: κ̂ is 0 where N = K, since nothing is left over. */
    @Test
    void onePullEachHasNoMeasuredLength() {
        List<Observation> pulls = List.of(new Observation(0, 1, 0, 0, 460), new Observation(0, 2, 1, 1, 463));
        double[][] curves = {{460, 461, 462}, {463, 464, 466}};
        CurveFit fit = new CurveFit(ChangeFit.of(pulls, Prior.OF_THIS_PROJECT), new int[] {2000, 2200, 2400}, curves);
        assertThat(fit.measuredLength()).isLessThan(1e-6);
        assertThat(fit.assumedLength()).isCloseTo(400 / 500.0, within(1e-6));
    }

    private static CurveFit curves() {
        Table table = Table.read("s2_curve.csv");
        double[][] curves = new double[9][GRID.length];
        List<Observation> pulls = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            int pull = (int) table.number(row, "pull") - 1;
            int bin = (int) (table.number(row, "rpm") - GRID[0]) / 200;
            curves[pull][bin] = 100 * Math.log(table.number(row, "power_kw"));
            if (bin == 0) {
                int setting = table.text(row, "setting").equals("A") ? 0 : 1;
                pulls.add(new Observation(0, pull + 1, pull / 3, setting, 460));
            }
        }
        return new CurveFit(ChangeFit.of(pulls, Prior.OF_THIS_PROJECT), GRID, curves);
    }
}
