package org.pullproof.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RpmRangeTest {
    @Test
    void aRangeIsWrittenAsItIsRead() {
        assertThat(RpmRange.parse("2600-5000rpm")).hasToString("2600-5000rpm").isEqualTo(new RpmRange(2600, 5000));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2600-5000", "5000-2600rpm", "2600-2900rpm", "100-5000rpm", "rpm"})
    void aRangeWithoutUnitOrWidthIsRefused(String typed) {
        assertThatThrownBy(() -> RpmRange.parse(typed)).isInstanceOf(IllegalArgumentException.class);
    }
}
