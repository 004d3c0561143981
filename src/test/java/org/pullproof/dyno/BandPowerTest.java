package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.units.RpmRange;

class BandPowerTest {
    private static final RpmRange BAND = new RpmRange(2600, 4100);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aConstantPowerHasItselfAsBandPower(long seed) {
        Trace trace = Traces.uneven(new Random(seed), rpm -> 123_456);
        assertThat(BandPower.of(trace, BAND).orElseThrow()).isCloseTo(123.456, within(1e-9));
    }

    /** The mean of a straight line over a range is its value in the middle, wherever the samples lie. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aStraightLineHasItsMiddleAsBandPower(long seed) {
        Trace trace = Traces.uneven(new Random(seed), rpm -> 20 * rpm - 500);
        assertThat(BandPower.of(trace, BAND).orElseThrow()).isCloseTo((20 * 3350 - 500) / 1e3, within(1e-9));
    }

    /** By calculus: the mean of n² from a to b is (b³ − a³)/3(b − a); trapezoids of 25 rpm add 25²·2/12. */
    @Test
    void aParabolaHasItsMeanAsBandPower() {
        double mean = (Math.pow(4100, 3) - Math.pow(2600, 3)) / 3 / 1500;
        assertThat(BandPower.of(Traces.even(2000, 6000, rpm -> rpm * rpm), BAND).orElseThrow() * 1e3)
                .isCloseTo(mean + 625 / 6.0, within(1e-3));
    }

    @Test
    void scalingInScalesOut() {
        double once =
                BandPower.of(Traces.uneven(new Random(7), Math::sqrt), BAND).orElseThrow();
        double thrice = BandPower.of(Traces.uneven(new Random(7), rpm -> 3 * Math.sqrt(rpm)), BAND)
                .orElseThrow();
        assertThat(thrice).isCloseTo(3 * once, within(1e-12));
    }

    @Test
    void aBandBetweenTwoSamplesIsReadOnTheLineBetweenThem() {
        Trace trace = Traces.of(new double[] {2000, 5000}, rpm -> rpm);
        assertThat(BandPower.of(trace, BAND).orElseThrow()).isCloseTo(3.350, within(1e-12));
    }

    @Test
    void aTraceThatEndsInTheBandHasNone() {
        assertThat(BandPower.of(Traces.even(2000, 4000, rpm -> rpm), BAND)).isEmpty();
    }

    @Test
    void theCommonBandIsWhatAllCover() {
        assertThat(BandPower.commonTo(List.of(Traces.even(2000, 6000, rpm -> 1), Traces.even(2200, 6200, rpm -> 1))))
                .contains(new RpmRange(2200, 6000));
    }

    @Test
    void tracesThatHardlyMeetHaveNoCommonBand() {
        assertThat(BandPower.commonTo(List.of(Traces.even(2000, 4000, rpm -> 1), Traces.even(3800, 6200, rpm -> 1))))
                .isEmpty();
    }
}
