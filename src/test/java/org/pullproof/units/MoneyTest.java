package org.pullproof.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1400USD|1400 USD", "1400,50 eur|1400.50 EUR", "-20 CHF|-20 CHF", "0USD|0 USD"})
    void moneyIsReadWithItsCurrency(String typed, String shown) {
        assertThat(Money.parse(typed)).hasToString(shown);
    }

    @Test
    void anAmountIsANumberToo() {
        assertThat(Money.of(12.5, "EUR")).isEqualTo(Money.parse("12.5EUR"));
        assertThat(Money.parse("-12,50 EUR").value()).isEqualTo(-12.5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1400", "$1400", "USD", "1400.555USD", "1e9USD", ""})
    void anythingElseIsRefusedWithAnExample(String typed) {
        assertThatThrownBy(() -> Money.parse(typed))
                .isInstanceOf(BadQuantityException.class)
                .hasMessageContaining("write 1400USD");
    }
}
