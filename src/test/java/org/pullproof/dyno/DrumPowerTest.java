package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

class DrumPowerTest {
    private static final double MILES_AN_HOUR = 0.44704;

    /** {@code inertia_run.csv}, exact by construction: I = 30 kg·m², ω(t) = 40 + 22 t − 0.9 t². A parabola is fitted exactly. */
    @Test
    void anExactRunGivesTheExactPower() throws IOException {
        List<double[]> rows = rows("inertia_run.csv");
        double[] found =
                power("30kgm2", "0%").of(column(rows, 0), column(rows, 1)).watt();
        assertThat(found).containsExactly(column(rows, 4), within(1e-6));
    }

    /** The same run at uneven times, some of them twice. */
    @Test
    void unevenAndRepeatedTimesGiveTheSamePower() {
        double[] second = new Random(5)
                .doubles(60, 0, 6)
                .map(t -> Math.round(t * 20) / 20.0)
                .sorted()
                .toArray();
        double[] radian = IntStream.range(0, 60)
                .mapToDouble(i -> 40 + 22 * second[i] - 0.9 * second[i] * second[i])
                .toArray();
        double[] watt = power("30kgm2", "0%").of(second, radian).watt();
        IntStream.range(0, 60)
                .forEach(i -> assertThat(watt[i]).isCloseTo(30 * radian[i] * (22 - 1.8 * second[i]), within(1e-4)));
    }

    /**
     * 40 CFR 1066.250, example: a force of 1.500 lbf takes a base inertia of 32.90 lbm from 10.00 to 40.00 mi/h in 30.00 s. Power is
     * that force times the speed; a mass at a radius of 1 m has its mass as inertia.
     */
    @ParameterizedTest
    @CsvSource({"10.00", "25.00", "40.00"})
    void aConstantForceAgreesWithTheFederalExample(double milesAnHour) {
        double[] second = IntStream.rangeClosed(0, 30).mapToDouble(i -> i).toArray();
        double[] metre = IntStream.rangeClosed(0, 30)
                .mapToDouble(i -> (10 + i) * MILES_AN_HOUR)
                .toArray();
        double kilogram = 32.90 * 0.45359237;
        double[] watt = power(kilogram + "kgm2", "0%").of(second, metre).watt();
        double newton = watt[(int) milesAnHour - 10] / (milesAnHour * MILES_AN_HOUR);
        assertThat(newton / 4.4482216152605).isCloseTo(1.500, within(0.0005));
    }

    /** P is in proportion to I, so a share of the one is the same share of the other. */
    @Test
    void theUncertaintyOfTheInertiaIsCarried() throws IOException {
        List<double[]> rows = rows("inertia_run.csv");
        DrumPower.Result found = power("30kgm2", "2%").of(column(rows, 0), column(rows, 1));
        assertThat(found.error()[3]).isCloseTo(0.02 * found.watt()[3], withinPercentage(0.01));
    }

    /** Half of the last digit typed: 34 ± 0.5 is 1.47 %. */
    @Test
    void withoutMoreToldTheInertiaIsKnownToHalfItsLastDigit() {
        assertThat(new Drum(inertia("34kgm2"), Optional.empty(), Optional.empty()).share())
                .isCloseTo(0.5 / 34, within(1e-12));
    }

    /** A speed with a scatter of 0.05 rad/s: the errors told cover the true power about as often as one standard error should, 68 %. */
    @Test
    void theScatterOfTheSpeedIsCarried() {
        Random random = new Random(11);
        int covered = 0;
        for (int run = 0; run < 200; run++) {
            double[] second = IntStream.range(0, 41).mapToDouble(i -> i * 0.02).toArray();
            double[] radian = IntStream.range(0, 41)
                    .mapToDouble(i -> 60 + 5 * second[i] + 0.05 * random.nextGaussian())
                    .toArray();
            DrumPower.Result found = power("30kgm2", "0%").of(second, radian);
            double truly = 30 * 5 * (60 + 5 * second[20]);
            covered += Math.abs(found.watt()[20] - truly) < found.error()[20] ? 1 : 0;
        }
        assertThat(covered).isBetween(110, 160);
    }

    @ParameterizedTest
    @CsvSource({
        "0kgm2, is not the inertia of a roll",
        "-3kgm2, is not the inertia of a roll",
        "200000kgm2, is not the inertia"
    })
    void anInertiaThatNoRollHasIsRefused(String inertia, String sentence) {
        assertThatThrownBy(() -> new Drum(inertia(inertia), Optional.empty(), Optional.empty()))
                .hasMessageContaining(sentence);
    }

    private static DrumPower power(String inertia, String within) {
        Drum drum = new Drum(inertia(inertia), Optional.of(Quantity.parse(within, Dimension.SHARE)), Optional.empty());
        return new DrumPower(drum, RollLoss.NOT_MEASURED);
    }

    private static Quantity inertia(String text) {
        return Quantity.parse(text, Dimension.INERTIA);
    }

    static List<double[]> rows(String file) throws IOException {
        try (InputStream in = Trace.class.getResourceAsStream(file)) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .skip(1)
                    .map(line -> Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
        }
    }

    static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }
}
