package org.pullproof.worth.decision.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BatchesTest {
    /** By hand: batch means 0.5, 2.5 … 18.5, their standard deviation (n − 1) √(4·82.5/9) = 6.0553, over √10 = 1.9149. */
    @Test
    void standardErrorIsTheScatterOfTenBatches() {
        double[] means =
                Batches.means(IntStream.range(0, 20).mapToDouble(i -> i).toArray());
        assertThat(means).startsWith(0.5, 2.5).hasSize(10);
        assertThat(Batches.mean(means)).isEqualTo(9.5, within(1e-12));
        assertThat(Batches.standardError(means)).isEqualTo(1.9149, within(5e-5));
    }

    @Test
    void oneDrawHasNoScatter() {
        assertThat(Batches.standardError(Batches.means(new double[] {3}))).isZero();
    }
}
