package org.pullproof.worth.decision.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.worth.decision.problem.Quote;

class QuoteQuantileTest {
    /**
     * By hand from (0, a) (0.1, P10) (0.5, P50) (0.9, P90) (1, b). 5–10–20: the figure worked in worth.md 4. −100–0–100: below 0 is
     * allowed where P10 is.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 10, 20, 2.5, 25, 11.625",
        "350, 650, 1300, 200, 1625, 763.75",
        "0, 0, 60, 0, 90, 19.5",
        "10, 100, 200, 0, 250, 105",
        "-100, 0, 100, -150, 150, 0",
        "70, 70, 70, 70, 70, 70"
    })
    void endsAndMeanAreThoseWorkedByHand(double p10, double p50, double p90, double a, double b, double mean) {
        QuoteQuantile quantile = new QuoteQuantile(new Quote(p10, p50, p90));
        assertThat(quantile.at(0)).isEqualTo(a, within(1e-9));
        assertThat(quantile.at(1)).isEqualTo(b, within(1e-9));
        assertThat(quantile.mean()).isEqualTo(mean, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0.1, 350", "0.5, 650", "0.9, 1300", "0.3, 500", "0.7, 975"})
    void passesThroughItsPointsInStraightLines(double share, double sum) {
        assertThat(new QuoteQuantile(new Quote(350, 650, 1300)).at(share)).isEqualTo(sum, within(1e-9));
    }
}
