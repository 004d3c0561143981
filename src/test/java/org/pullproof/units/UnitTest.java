package org.pullproof.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitTest {
    /** GNU units 2.22 prints 15 digits; a factor agrees within the last of them. */
    private static final double PRINTED = 1e-13;

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "PSI, 6894.75729316836",
                "INHG, 3386.388640341",
                "HP, 745.69987158227",
                "PS, 735.49875",
                "LB_FT, 1.3558179483314",
                "KGF_M, 9.80665",
                "KGF_CM2, 98066.5",
                "FT, 0.3048",
                "MI, 1609.344",
                "LB, 0.45359237",
                "LB_FT2, 0.0421401100938048",
                "CU_IN, 1.6387064e-5"
            })
    void aFactorAgreesWithGnuUnits(Unit unit, double factor) {
        assertThat(unit.factor()).isCloseTo(factor, withinRelative(factor));
    }

    /** GNU units 2.22: tempF(60) = 288.705555556 K, tempF(-40) = -40 °C, tempF(212) = 671.67 °R = 373.15 K. */
    @ParameterizedTest
    @CsvSource({"60, 288.705555556", "-40, 233.15", "212, 373.15", "77, 298.15", "68, 293.15"})
    void fahrenheitBecomesKelvinAsInGnuUnits(double fahrenheit, double kelvin) {
        assertThat(Unit.FAHRENHEIT.toSi(fahrenheit)).isCloseTo(kelvin, org.assertj.core.data.Offset.offset(5e-10));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void goingToSiAndBackIsTheSameFigure(Unit unit) {
        assertThat(unit.fromSi(unit.toSi(12.5))).isCloseTo(12.5, withinRelative(12.5));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everySymbolNamesItsUnit(Unit unit) {
        assertThat(Unit.named(unit.symbol())).contains(unit);
    }

    @ParameterizedTest
    @MethodSource("dimensions")
    void everyDimensionHasAUnit(Dimension dimension) {
        assertThat(Unit.of(dimension)).isNotEmpty();
    }

    static Stream<Dimension> dimensions() {
        return Arrays.stream(Dimension.values()).sorted(Comparator.naturalOrder());
    }

    @Test
    void caseDoesNotMatterInAUnitsName() {
        assertThat(Unit.named("KPA")).contains(Unit.KPA);
    }

    @Test
    void anUnknownNameIsNoUnit() {
        assertThat(Unit.named("furlong")).isEmpty();
    }

    private static org.assertj.core.data.Offset<Double> withinRelative(double expected) {
        return org.assertj.core.data.Offset.offset(Math.abs(expected) * PRINTED);
    }
}
