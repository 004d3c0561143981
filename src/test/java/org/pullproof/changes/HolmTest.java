package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HolmTest {
    /** By hand from Holm's rule: 0.01·4, 0.02·3, then 0.03·2 and 0.04·1 held up by the running maximum. */
    @Test
    void multipliesFromTheSmallestAndNeverFalls() {
        double[] adjusted = Holm.adjusted(new double[] {0.04, 0.01, 0.03, 0.02});
        assertThat(adjusted).containsExactly(new double[] {0.06, 0.04, 0.06, 0.06}, within(1e-12));
    }

    @Test
    void neverExceedsOne() {
        assertThat(Holm.adjusted(new double[] {0.7, 0.8})).containsExactly(1, 1);
    }
}
