package org.pullproof.worth.decision.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StreamsTest {
    private static final int SIZE = 1000;
    private final Streams streams = new Streams(7, SIZE);

    /** What a Latin hypercube is: one draw in each of n/10 equal slices. */
    @Test
    void everyBatchHasOneDrawInEachSlice() {
        double[] draws = streams.uniform(Ingredient.QUOTE, "valve job");
        for (int b = 0; b < Batches.COUNT; b++) {
            int[] slices = Arrays.stream(draws, b * 100, (b + 1) * 100)
                    .mapToInt(u -> (int) (u * 100))
                    .sorted()
                    .toArray();
            assertThat(slices).isEqualTo(IntStream.range(0, 100).toArray());
        }
    }

    @Test
    void theSameSeedAndNameGiveTheSameDraws() {
        assertThat(new Streams(7, SIZE).uniform(Ingredient.QUOTE, "valve job"))
                .isEqualTo(streams.uniform(Ingredient.QUOTE, "valve job"));
    }

    @Test
    void anotherSeedKindOrNameGivesOtherDraws() {
        double[] draws = streams.uniform(Ingredient.QUOTE, "valve job");
        assertThat(streams.uniform(Ingredient.OVERRUN, "valve job")).isNotEqualTo(draws);
        assertThat(streams.uniform(Ingredient.QUOTE, "gasket set")).isNotEqualTo(draws);
        assertThat(new Streams(8, SIZE).uniform(Ingredient.QUOTE, "valve job")).isNotEqualTo(draws);
    }

    /** Independent streams: a correlation of 1,000 pairs beyond 0.13 comes once in some 25,000 cases (4 / √1000). */
    @Test
    void twoStreamsAreNotCorrelated() {
        double[] one = streams.normal(Ingredient.OVERRUN, "valve job");
        double[] other = streams.normal(Ingredient.HOURS, "valve job");
        double product =
                IntStream.range(0, SIZE).mapToDouble(i -> one[i] * other[i]).sum() / SIZE;
        assertThat(product).isEqualTo(0, within(0.13));
    }

    /** Standard normal: mean 0 and variance 1, which slices meet far better than plain draws. */
    @Test
    void normalDrawsHaveMeanZeroAndVarianceOne() {
        double[] z = streams.normal(Ingredient.GAIN, "heads");
        assertThat(Arrays.stream(z).average().orElseThrow()).isEqualTo(0, within(0.005));
        assertThat(Arrays.stream(z).map(x -> x * x).average().orElseThrow()).isEqualTo(1, within(0.02));
    }

    /** Variance ν/(ν − 2) of Student's t; with 14 degrees of freedom 14/12. */
    @Test
    void studentDrawsHaveTheVarianceOfTheirDegrees() {
        double[] t = new Streams(7, 20_000).student(Ingredient.GAIN, "setup 7", 14);
        assertThat(Arrays.stream(t).map(x -> x * x).average().orElseThrow()).isEqualTo(14.0 / 12, within(0.01));
    }

    @Test
    void aNumberOfDrawsThatTenDoesNotDivideIsRefused() {
        assertThatThrownBy(() -> new Streams(7, 55))
                .hasMessage("The number of draws must be 1 or a multiple of ten, was 55.");
    }
}
