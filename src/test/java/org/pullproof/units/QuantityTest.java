package org.pullproof.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
    private static final long SEED = 20261125;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "98.2kPa|98.2|KPA",
                "98,2 kPa|98.2|KPA",
                "29.92inHg|29.92|INHG",
                " 14.7 PSI |14.7|PSI",
                "982hPa|982|HPA",
                ".5bar|.5|BAR"
            })
    void aPressureIsReadAsPeopleTypeIt(String typed, BigDecimal figure, Unit unit) {
        Quantity read = Quantity.parse(typed, Dimension.PRESSURE);
        assertThat(read.figure()).isEqualByComparingTo(figure);
        assertThat(read.unit()).isEqualTo(unit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "85F|TEMPERATURE|302.5944444",
                "30C|TEMPERATURE|303.15",
                "-5°C|TEMPERATURE|268.15",
                "−5 °C|TEMPERATURE|268.15",
                "60%|SHARE|0.6",
                "0.040in|LENGTH|0.001016",
                "800ft|LENGTH|243.84",
                "32deg|ANGLE|32",
                "0.035\"|LENGTH|0.000889"
            })
    void otherQuantitiesBecomeSi(String typed, Dimension dimension, double si) {
        assertThat(Quantity.parse(typed, dimension).si()).isCloseTo(si, within(1e-6));
    }

    @Test
    void aBareFigureIsRefusedWithTheUnitsItCouldHave() {
        assertThatThrownBy(() -> Quantity.parse("98.2", Dimension.PRESSURE))
                .isInstanceOf(BadQuantityException.class)
                .hasMessageStartingWith("\"98.2\" has no unit: write 98.2kPa or ")
                .hasMessageContaining("98.2psi")
                .hasMessageContaining("98.2inHg");
    }

    @Test
    void aBareFigureInAFieldTakesTheUnitBesideIt() {
        assertThat(Quantity.parse("0.035", Unit.IN)).isEqualTo(Quantity.of("0.035", Unit.IN));
    }

    @Test
    void aFieldTakesAnyOtherUnitToo() {
        assertThat(Quantity.parse("0.9 mm", Unit.IN)).isEqualTo(Quantity.of("0.9", Unit.MM));
    }

    @Test
    void aUnitOfAnotherKindIsRefusedByName() {
        assertThatThrownBy(() -> Quantity.parse("30C", Dimension.PRESSURE))
                .hasMessageStartingWith("\"30C\" is a temperature, not a pressure");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "kPa", "abc", "NaN kPa", "1e999999 kPa", "--5kPa", "98.2 furlong", "1.2.3 kPa"})
    void nonsenseIsRefusedInASentence(String typed) {
        assertThatThrownBy(() -> Quantity.parse(typed, Dimension.PRESSURE))
                .isInstanceOf(BadQuantityException.class)
                .hasMessageContaining("write ");
    }

    @Test
    void aVeryLongTextIsRefusedWithoutRepeatingIt() {
        assertThatThrownBy(() -> Quantity.parse("9".repeat(100_000) + "kPa", Dimension.PRESSURE))
                .isInstanceOf(BadQuantityException.class)
                .message()
                .hasSizeLessThan(300);
    }

    @Test
    void fortyCharactersAreReadAndOneMoreIsNot() {
        String forty = "9".repeat(37) + "kPa";
        assertThat(Quantity.parse(forty, Dimension.PRESSURE).unit()).isEqualTo(Unit.KPA);
        assertThatThrownBy(() -> Quantity.parse("9" + forty, Dimension.PRESSURE))
                .isInstanceOf(BadQuantityException.class)
                .hasMessageStartingWith("\"" + "9".repeat(38) + "kP…\" is not a pressure");
    }

    @Test
    void withoutADimensionTheUnitTellsIt() {
        assertThat(Quantity.parse("32deg")).isEqualTo(Quantity.of("32", Unit.DEGREE));
        assertThatThrownBy(() -> Quantity.parse("32furlong"))
                .isInstanceOf(BadQuantityException.class)
                .hasMessageStartingWith("\"32furlong\" is not a figure with a unit known here");
        assertThatThrownBy(() -> Quantity.parse("deg")).isInstanceOf(BadQuantityException.class);
    }

    /** 1 inHg = 3.386 389 kPa: NIST SP 811, appendix B.8. */
    @Test
    void itIsToldInAnotherUnitOfItsDimensionAlone() {
        Quantity pressure = Quantity.of("29.92", Unit.INHG);
        assertThat(pressure.in(Unit.KPA)).isCloseTo(29.92 * 3.386389, within(1e-4));
        assertThat(pressure.in(Unit.INHG)).isEqualTo(29.92);
        assertThat(pressure.pressure().pascal()).isCloseTo(101_320.8, within(0.1));
        assertThatThrownBy(() -> pressure.in(Unit.MM)).hasMessage("29.92 inHg is a pressure, not a length");
        assertThatThrownBy(pressure::temperature).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aTemperatureIsToldInKelvin() {
        Quantity boiling = Quantity.of(212, Unit.FAHRENHEIT);
        assertThat(boiling.temperature().kelvin()).isCloseTo(373.15, within(1e-9));
        assertThat(boiling.requireDimension(Dimension.TEMPERATURE)).isSameAs(boiling);
        assertThatThrownBy(boiling::pressure).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theDigitsTypedTellTheResolution() {
        assertThat(Quantity.parse("98.20kPa", Dimension.PRESSURE).halfStepSi()).isCloseTo(5, within(1e-9));
    }

    @Test
    void trailingZerosAreKept() {
        assertThat(Quantity.parse("98.20kPa", Dimension.PRESSURE)).hasToString("98.20 kPa");
    }

    @ParameterizedTest
    @MethodSource("anyQuantities")
    void whatIsWrittenIsReadBackTheSame(Quantity quantity) {
        assertThat(Quantity.parse(quantity.toString(), quantity.dimension())).isEqualTo(quantity);
    }

    static Stream<Quantity> anyQuantities() {
        Random random = new Random(SEED);
        Unit[] units = Unit.values();
        return IntStream.range(0, 200)
                .mapToObj(i -> new Quantity(
                        BigDecimal.valueOf(random.nextInt(2_000_000) - 1_000_000, random.nextInt(5)),
                        units[i % units.length]));
    }
}
