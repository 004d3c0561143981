package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LocalPolynomialTest {
    /**
     * On even steps the weight of a neighbour is that of Savitzky and Golay: what the fit makes of a single 1 among noughts. Rows of
     * {@code savgol.csv} (scipy 1.10.1) for the value and the slope; the higher derivatives there are not computed here.
     */
    @ParameterizedTest
    @MethodSource("valuesAndSlopes")
    void onEvenStepsTheWeightsAreThoseOfSavitzkyAndGolay(
            int window, int order, int derivative, double delta, int index, double weight) {
        double[] x = IntStream.range(0, window)
                .mapToDouble(i -> (i - window / 2) * delta)
                .toArray();
        double[] y = new double[window];
        y[window / 2 + index] = 1;
        LocalPolynomial.Fit fit = new LocalPolynomial(order).at(x, y, 0, window, 0);
        assertThat(derivative == 0 ? fit.value() : fit.slope()).isCloseTo(weight, within(1e-12));
    }

    static Stream<Arguments> valuesAndSlopes() throws IOException {
        try (InputStream in = Trace.class.getResourceAsStream("savgol.csv")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .skip(1)
                    .map(line -> line.split(","))
                    .filter(row -> Integer.parseInt(row[2]) < 2)
                    .map(row -> Arguments.of((Object[]) row));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aParabolaOnUnevenStepsIsReproduced(long seed) {
        Random random = new Random(seed);
        double[] x = random.doubles(9, -2, 2).sorted().toArray();
        double[] y = IntStream.range(0, 9)
                .mapToDouble(i -> 3 - 2 * x[i] + 0.7 * x[i] * x[i])
                .toArray();
        LocalPolynomial.Fit fit = new LocalPolynomial(2).at(x, y, 0, 9, 0.5);
        assertThat(fit.value()).isCloseTo(3 - 1 + 0.7 * 0.25, within(1e-10));
        assertThat(fit.slope()).isCloseTo(-2 + 0.7, within(1e-10));
        assertThat(fit.slopeError()).isCloseTo(0, within(1e-6));
    }

    /** Textbook: the standard error of a straight line's slope is s/√Σ(x − mean)²; residuals 1, −1, −1, 1 about a level line: s² = 4/2. */
    @Test
    void theSlopeHasItsStandardError() {
        LocalPolynomial.Fit fit =
                new LocalPolynomial(1).at(new double[] {-3, -1, 1, 3}, new double[] {1, -1, -1, 1}, 0, 4, 0);
        assertThat(fit.slopeError()).isCloseTo(Math.sqrt(2.0 / 20), within(1e-12));
    }

    @Test
    void tooFewPointsAreRefused() {
        assertThatThrownBy(() -> new LocalPolynomial(2).at(new double[] {0, 1}, new double[] {0, 1}, 0, 2, 0))
                .hasMessageContaining("needs 3 points, was 2");
    }

    @Test
    void pointsAtOnePlaceAreRefused() {
        double[] same = {1, 1, 1, 2};
        assertThatThrownBy(() -> new LocalPolynomial(2).at(same, same, 0, 4, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
