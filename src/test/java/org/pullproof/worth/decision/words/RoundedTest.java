package org.pullproof.worth.decision.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundedTest {
    private final Rounded dollars = new Rounded("USD");

    /** Two digits of the noise, by hand: 517 leaves tens, 54 leaves units, 5,170 leaves hundreds; never finer than a unit. */
    @ParameterizedTest
    @CsvSource({
        "289.51, 517, $290",
        "167.5, 54, $168",
        "1668.2, 5170, '$1,700'",
        "38.18, 0.02, $38",
        "38.18, 0, $38",
        "-1966, 320, '\u22121,970'"
    })
    void sumsAreRoundedToTwoDigitsOfTheirNoise(double value, double noise, String shown) {
        assertThat(dollars.sum(value, noise).replace("\u2212$", "\u2212")).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"778.99, $780", "5515.78, '$5,500'", "0, $0"})
    void withoutNoiseTheyHaveTwoDigitsOfTheirOwn(double value, String shown) {
        assertThat(dollars.sum(value)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"6.407, $6.4", "28.1, $28", "2, $2", "9.99, $10"})
    void pricesBelowTenHaveOneDecimal(double value, String shown) {
        assertThat(dollars.price(value)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"0.2362, 24", "0.0517, 5.2", "0.07, 7", "0.001, 0.1"})
    void chancesHaveTwoDigits(double chance, String shown) {
        assertThat(Rounded.percent(chance)).isEqualTo(shown + "\u00a0%");
    }

    @Test
    void otherCurrenciesComeAfterTheFigure() {
        assertThat(new Rounded("EUR").price(6.4)).isEqualTo("6.4\u00a0EUR");
        assertThat(new Rounded("EUR").sum(1234, 100)).isEqualTo("1,230\u00a0EUR");
    }
}
