package org.pullproof.worth.decision.draws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WeightedQuantileTest {
    /** By hand: weights 0.05 each for 1, 2 and 0.45 each for 3, 4: 10 % is reached at 2, half at 3, 90 % at 4. */
    @Test
    void takesTheSmallestValueThatReachesTheShare() {
        WeightedQuantile quantile = new WeightedQuantile(new double[][] {{1, 2}, {4, 3}}, new double[] {0.1, 0.9});
        assertThat(quantile.at(0.1)).isEqualTo(2);
        assertThat(quantile.at(0.5)).isEqualTo(3);
        assertThat(quantile.at(0.9)).isEqualTo(4);
    }

    @Test
    void singlePointsComeOutExactly() {
        double[] points = new double[1000];
        Arrays.fill(points, -656.123456789);
        points[0] = 5000;
        assertThat(new WeightedQuantile(new double[][] {points}, new double[] {1}).at(0.5))
                .isEqualTo(-656.123456789);
    }

    /** With equal weights it is the order statistic: of 1,000 sorted values the 100th, 500th and 900th. */
    @Test
    void agreesWithSorting() {
        double[] draws =
                new SplittableRandom(3).doubles(1000).map(u -> Math.log(u)).toArray();
        WeightedQuantile quantile = new WeightedQuantile(new double[][] {draws}, new double[] {1});
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        assertThat(quantile.at(0.1)).isEqualTo(sorted[99]);
        assertThat(quantile.at(0.5)).isEqualTo(sorted[499]);
        assertThat(quantile.at(0.9)).isEqualTo(sorted[899]);
    }

    @Test
    void statesWithoutChanceDoNotCount() {
        WeightedQuantile quantile = new WeightedQuantile(new double[][] {{-1e6}, {7}}, new double[] {0, 1});
        assertThat(quantile.at(0.1)).isEqualTo(7);
    }
}
