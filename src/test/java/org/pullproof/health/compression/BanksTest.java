package org.pullproof.health.compression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class BanksTest {
    /**
     * Student's sleep data, pooled two-sample test of R 4: t = −1.86081346748685, 18 degrees of freedom, standard error
     * 0.849091017238762. t(0.95, 18) = 1.734064 from printed t tables.
     */
    private static final List<Double> FIRST = List.of(0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0);

    private static final List<Double> SECOND = List.of(1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4);

    @Test
    void theIntervalAgreesWithThePooledTestOfTheSleepData() {
        Banks banks = Banks.of(FIRST, SECOND).orElseThrow();

        assertThat(banks.difference()).isCloseTo(-1.86081346748685 * 0.849091017238762, within(1e-12));
        assertThat(banks.half()).isCloseTo(1.734064 * 0.849091017238762, within(1e-6));
        assertThat(banks.apart()).isTrue();
    }

    @Test
    void aBankOfOneReadingIsNotCompared() {
        assertThat(Banks.of(List.of(1.0), SECOND)).isEmpty();
    }

    @Test
    void banksThatOverlapAreNotApart() {
        assertThat(Banks.of(List.of(150.0, 160.0, 155.0), List.of(152.0, 158.0, 157.0))
                        .orElseThrow()
                        .apart())
                .isFalse();
    }
}
