package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CoastDownTest {
    private static final double POUND = 0.45359237;
    private static final double FOOT = 0.3048;
    private static final double FOOT_POUND_A_SECOND = 1.3558179483314;

    static Stream<Arguments> federalRows() throws IOException {
        return DrumPowerTest.rows("cfr_86_529_coastdown.csv").stream()
                .filter(row -> row[0] != 160) // misprinted, see SOURCE.md
                .map(row -> Arguments.of(row[0], row[1], row[2], row[4], row[3]));
    }

    /**
     * 40 CFR 86.529-98, figure F98-9: the target time from 70 to 60 km/h is printed in hundredths, some in steps of 0.02 s; the
     * source's own check found all rows but one within 0.012 s.
     */
    @ParameterizedTest
    @MethodSource("federalRows")
    void theTimeBetweenTwoSpeedsAgreesWithTheFederalTable(
            double mass, double a, double c, double seconds, double force) {
        Drag drag = Drag.exactly(a, 0, c * 3.6 * 3.6);
        assertThat(drag.seconds(mass, 70 / 3.6, 60 / 3.6)).isCloseTo(seconds, within(0.012));
        assertThat(drag.at(65 / 3.6)).isCloseTo(force, within(0.2));
    }

    /** {@code coastdown.csv}: closed form for 1500 kg and F = 150 + 2 v + 0.45 v², times printed to a microsecond. */
    @Test
    void theDragIsFoundFromItsOwnCoastDown() throws IOException {
        List<double[]> rows = DrumPowerTest.rows("coastdown.csv");
        Drag drag = fit(rows);
        assertThat(drag.a()).isCloseTo(150, within(0.01));
        assertThat(drag.b()).isCloseTo(2, within(0.001));
        assertThat(drag.c()).isCloseTo(0.45, within(0.0001));
        rows.forEach(row -> assertThat(drag.at(row[0] / 3.6)).isCloseTo(row[2], within(0.01)));
    }

    private static Drag fit(List<double[]> rows) {
        double[] speed = Arrays.stream(DrumPowerTest.column(rows, 0))
                .map(kmh -> kmh / 3.6)
                .toArray();
        return CoastDown.fit(1500, DrumPowerTest.column(rows, 1), speed);
    }

    /**
     * 40 CFR 1066.260, example: 2000 lbm slow from 10.0 to 9.2 mi/h (14.7 to 13.5 ft/s) in 60 s, which is a power of −17.5 ft·lbf/s.
     * With a force that does not change, that is the power at the mean speed.
     */
    @Test
    void theParasiticPowerAgreesWithTheFederalExample() {
        double force = 2000 * POUND * (14.7 - 13.5) * FOOT / 60;
        assertThat(Drag.exactly(force, 0, 0).watt((14.7 + 13.5) / 2 * FOOT) / FOOT_POUND_A_SECOND)
                .isCloseTo(17.5, within(0.05));
    }

    /** The same roll let run on until it has slowed to half: the loss found is that of the example at its mean speed. */
    @Test
    void theLossOfARollIsFoundFromItsCoastDown() {
        double[] second =
                IntStream.rangeClosed(0, 36).mapToDouble(i -> 10.0 * i).toArray();
        double[] metre =
                Arrays.stream(second).map(t -> (14.7 - 1.2 * t / 60) * FOOT).toArray();
        Drag drag = CoastDown.fit(2000 * POUND, second, metre);
        assertThat(drag.watt(14.1 * FOOT) / FOOT_POUND_A_SECOND).isCloseTo(17.5, within(0.05));
    }

    /** A scatter of 0.05 m/s on the closed form: the error told at 80 km/h covers the true force about as often as it should, 68 %. */
    @Test
    void theUncertaintyOfTheDragIsHonest() throws IOException {
        Random random = new Random(7);
        List<double[]> exact = DrumPowerTest.rows("coastdown.csv");
        int covered = 0;
        for (int run = 0; run < 200; run++) {
            List<double[]> noisy = exact.stream()
                    .map(row -> new double[] {row[0] + 3.6 * 0.05 * random.nextGaussian(), row[1]})
                    .toList();
            Drag drag = fit(noisy);
            covered += Math.abs(drag.at(80 / 3.6) - 416.666667) < drag.errorAt(80 / 3.6) ? 1 : 0;
        }
        assertThat(covered).isBetween(110, 160);
    }

    @Test
    void aShortCoastDownIsRefused() {
        double[] second = IntStream.range(0, 20).mapToDouble(i -> i).toArray();
        double[] speed = Arrays.stream(second).map(t -> 30 - 0.1 * t).toArray();
        assertThatThrownBy(() -> CoastDown.fit(1500, second, speed)).hasMessageContaining("let it coast longer");
    }

    @Test
    void aHandfulOfSamplesIsRefused() {
        assertThatThrownBy(() -> CoastDown.fit(1500, new double[] {0, 10}, new double[] {30, 10}))
                .hasMessageContaining("needs 8 samples");
    }
}
