package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pullproof.dyno.PullFindings;

class CalibrationTest {
    /** Section 5 of the method: s0² := (4·0.36 + RSS)/(4 + df), ν0 := min(4 + df, 12). RSS of ±1 six times is 6, df 5. */
    @Test
    void sixPullsGiveTheScatterTheirWeight() {
        Prior prior = Calibration.after(new double[] {461, 459, 461, 459, 461, 459}, Prior.OF_THIS_PROJECT);
        assertThat(prior.scatter() * prior.scatter()).isCloseTo((4 * 0.36 + 6) / 9, within(1e-12));
        assertThat(prior.weight()).isEqualTo(9);
    }

    @Test
    void manyPullsWeighNoMoreThanTwelve() {
        assertThat(Calibration.after(new double[20], Prior.OF_THIS_PROJECT).weight())
                .isEqualTo(12);
    }

    @Test
    void onlyPullsThatAPersonSetApartCalibrate() {
        List<PullFindings> counted =
                new Pulls().on("A", 100, 101, 99, 100, 101, 99).list();
        assertThat(Calibration.of(counted, Basis.CORRECTED, Prior.OF_THIS_PROJECT))
                .isEqualTo(Prior.OF_THIS_PROJECT);
    }

    @Test
    void sixSetApartDo() {
        Pulls pulls = new Pulls();
        for (double kilowatt : new double[] {100, 102, 98, 101, 99, 100}) {
            pulls.excluded("A", kilowatt, "Calibration run");
        }
        assertThat(Calibration.of(pulls.list(), Basis.CORRECTED, Prior.OF_THIS_PROJECT)
                        .weight())
                .isEqualTo(9);
    }
}
