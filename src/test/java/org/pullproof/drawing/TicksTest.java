package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TicksTest {

    @ParameterizedTest
    @CsvSource({
        "105, 206, 50, 100, 250",
        "-2.5, 4.9, 5, -5, 5",
        "-0.7, 0.9, 0.5, -1, 1",
        "0, 11200, 5000, 0, 15000",
        "199, 201, 0.5, 199, 201",
        "7, 7, 2, 6, 8"
    })
    void ticksAreRoundAndCoverBothEnds(double low, double high, double step, double first, double last) {
        Ticks ticks = Ticks.covering(low, high, 5);

        assertThat(ticks.step()).isEqualTo(step, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(ticks.low()).isEqualTo(first, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(ticks.high()).isEqualTo(last, org.assertj.core.data.Offset.offset(1e-9));
    }

    @Test
    void ticksOfAnAxisOfSpeedLieInsideIt() {
        assertThat(Ticks.inside(1980, 5220, 5).values()).containsExactly(2000.0, 3000.0, 4000.0, 5000.0);
    }

    @ParameterizedTest
    @MethodSource("seededRanges")
    void anyRangeIsCoveredByTwoToFiveTicksOfStep1Or2Or5(double low, double high) {
        Ticks ticks = Ticks.covering(low, high, 5);

        assertThat(ticks.low()).isLessThanOrEqualTo(low + 1e-6 * Math.abs(low));
        assertThat(ticks.high()).isGreaterThanOrEqualTo(high - 1e-6 * Math.abs(high));
        assertThat(ticks.values()).hasSizeBetween(2, 5);
        double digit = ticks.step() / Math.pow(10, Math.floor(Math.log10(ticks.step()) + 1e-9));
        assertThat(Math.round(digit * 1e6) / 1e6).isIn(1.0, 2.0, 5.0);
    }

    static Stream<Arguments> seededRanges() {
        Random random = new Random(20);
        return Stream.generate(() -> {
                    double low = random.nextGaussian() * 300;
                    return Arguments.of(low, low + Math.exp(random.nextGaussian() * 3));
                })
                .limit(300);
    }
}
