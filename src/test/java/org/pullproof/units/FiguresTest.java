package org.pullproof.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
    private static final Figures US = new Figures(UnitSystem.US);
    private static final Figures METRIC = new Figures(UnitSystem.METRIC);

    @Test
    void oneReadingIsShownInTheUnitsOfEachSystem() {
        double pascal = Unit.PSI.toSi(158);
        assertThat(US.of(pascal, Shown.COMPRESSION)).isEqualTo("158\u00a0psi");
        assertThat(METRIC.of(pascal, Shown.COMPRESSION)).isEqualTo("1,089\u00a0kPa");
    }

    @Test
    void aDifferenceOfTemperaturesHasNoOffset() {
        assertThat(US.difference(10, Shown.AIR_TEMPERATURE)).isEqualTo("18\u00a0°F");
    }

    @ParameterizedTest
    @CsvSource({"1.44, +1.4", "-0.96, −1.0", "0.04, 0.0", "-0.04, 0.0", "0, 0.0"})
    void aSignedFigureShowsItsSignUnlessItRoundsToZero(double value, String shown) {
        assertThat(Figures.signed(value, 1)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1400|USD|$1,400", "-560|USD|−$560", "0|USD|$0", "-0.2|USD|$0", "1400|EUR|1,400\u00a0EUR"})
    void moneyHasItsCurrencyAndItsSign(double amount, String currency, String shown) {
        assertThat(Figures.money(amount, currency)).isEqualTo(shown);
    }
}
