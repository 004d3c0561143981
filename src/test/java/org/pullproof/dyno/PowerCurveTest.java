package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PowerCurveTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aStraightLineStaysWhatItIs(long seed) {
        PowerCurve curve = PowerCurve.from(Traces.uneven(new Random(seed), rpm -> 7 * rpm + 300));
        for (int i = 0; i < curve.size(); i++) {
            assertThat(curve.watt(i)).isCloseTo(7.0 * curve.rpm(i) + 300, within(1e-6));
        }
    }

    @Test
    void aCoarseTraceIsJoinedByStraightLines() {
        PowerCurve curve = PowerCurve.from(Traces.of(new double[] {2000, 2200, 2400}, rpm -> rpm < 2201 ? 100 : 300));
        assertThat(curve.watt(15)).isCloseTo(200, within(1e-9)); // 2300 rpm, half way
    }

    @Test
    void theGridLiesInsideTheMeasuredRange() {
        PowerCurve curve = PowerCurve.from(Traces.of(new double[] {2001, 2050, 2100, 2199}, rpm -> 1));
        assertThat(curve.rpm(0)).isEqualTo(2020);
        assertThat(curve.rpm(curve.size() - 1)).isEqualTo(2180);
    }

    @Test
    void aNarrowTraceHasNoPoints() {
        assertThat(PowerCurve.from(Traces.of(new double[] {2001, 2010}, rpm -> 1))
                        .size())
                .isZero();
    }

    /** The mean of 2k + 1 independent values scatters by 1/√(2k + 1) of one; a line's middle value is that mean. */
    @Test
    void smoothingCalmsScatter() {
        Random random = new Random(11);
        DoubleUnaryOperator noise = rpm -> 1000 + random.nextGaussian();
        double[] rpm = IntStream.range(0, 400).mapToDouble(i -> 2000 + 10 * i).toArray();
        PowerCurve curve = PowerCurve.from(Traces.of(rpm, noise));
        double squares = 0;
        for (int i = 10; i < curve.size() - 10; i++) {
            squares += Math.pow(curve.watt(i) - 1000, 2) / (curve.size() - 20);
        }
        assertThat(Math.sqrt(squares)).isCloseTo(1 / Math.sqrt(13), within(0.06));
    }

    /** P = M·ω: 31 415.93 W at 3000/min are 100 N·m. */
    @Test
    void torqueIsPowerOverAngularSpeed() {
        assertThat(PowerCurve.of(3000, new double[] {31415.9265}).newtonMetre(0))
                .isCloseTo(100, within(1e-6));
    }
}
