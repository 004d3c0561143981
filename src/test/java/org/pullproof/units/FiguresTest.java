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

    @Test
    void percentagesHaveTheirSignWhereItMatters() {
        assertThat(Figures.percent(5, 1)).isEqualTo("5.0\u00a0%");
        assertThat(Figures.percent(-1234.5, 0)).isEqualTo("−1,234\u00a0%");
        assertThat(Figures.signedPercent(1.44, 1)).isEqualTo("+1.4\u00a0%");
    }

    @Test
    void decimalsAreNeitherFewerNorMoreThanAsked() {
        assertThat(Figures.number(2, 2)).isEqualTo("2.00");
        assertThat(Figures.number(2.128, 2)).isEqualTo("2.13");
    }

    @Test
    void aGapIsShownToTheThousandthOfAnInchOrTheHundredthOfAMillimetre() {
        double metre = 0.035 * 0.0254;
        assertThat(US.of(metre, Shown.GAP)).isEqualTo("0.035\u00a0in");
        assertThat(METRIC.of(metre, Shown.GAP)).isEqualTo("0.89\u00a0mm");
    }

    @Test
    void whatAPersonEditsHasAllItsDigitsAndNoMore() {
        assertThat(Figures.plain(0.45)).isEqualTo("0.45");
        assertThat(Figures.plain(5)).isEqualTo("5");
        assertThat(Figures.plain(1e7)).isEqualTo("10000000");
    }

    @Test
    void typedMoneyIsShownLikeAnyOther() {
        assertThat(Figures.money(Money.parse("1400,50EUR"))).isEqualTo("1,400\u00a0EUR");
    }
}
