package org.pullproof.ui.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "$6,400; 6400USD",
                "$ 1400.50; 1400.50USD",
                "1400EUR; 1400EUR",
                "$6,40; $6,40",
                "12,50 EUR; 12,50 EUR"
            })
    void dollarsAreReadAsTheWindowWritesThem(String typed, String read) {
        assertThat(Typed.money(typed)).isEqualTo(read);
    }

    @Test
    void aCommaThatMayPartThousandsIsAskedAbout() {
        assertThatThrownBy(() -> Typed.unmistakable("84,300 mi"))
                .hasMessage("\"84,300 mi\" may be 84300 or 84.300: write it one of these ways.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"98,2kPa", "0,035 in", "84300mi", "1,0125 bar"})
    void aDecimalCommaStands(String typed) {
        assertThat(Typed.unmistakable(typed)).isEqualTo(typed);
    }
}
