package org.pullproof.worth.decision.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentQuantileTest {
    /** Quantiles of Student's t from R 4.2.2, function qt; the standard normal value of the same chance by our mathematics library. */
    @ParameterizedTest
    @CsvSource({
        "3, 0.9, 1.63774435369621",
        "3, 0.95, 2.35336343480182",
        "3, 0.99, 4.54070285856813",
        "5, 0.975, 2.57058183563631",
        "6, 0.9995, 5.95881617881888",
        "7, 0.995, 3.49948329735049"
    })
    void agreesWithPrintedQuantiles(double degrees, double chance, double t) {
        double z = new NormalDistribution().inverseCumulativeProbability(chance);
        StudentQuantile quantile = new StudentQuantile(degrees);
        assertThat(quantile.applyAsDouble(z)).isEqualTo(t, within(1e-5));
        assertThat(quantile.applyAsDouble(-z)).isEqualTo(-t, within(1e-5));
    }

    /** Student's t with 3 degrees of freedom passes 6 before a chance of 0.9995 (R: 12.9). */
    @ParameterizedTest
    @CsvSource({"3.29, 6", "-3.29, -6", "9, 6"})
    void isCutAtSix(double z, double t) {
        assertThat(new StudentQuantile(3).applyAsDouble(z)).isEqualTo(t);
    }
}
