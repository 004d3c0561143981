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

    @Test
    void theWidestAndTheNarrowestBandArePossible() {
        assertThat(RpmRange.possible(500, 20000)).isTrue();
        assertThat(RpmRange.possible(2600, 3100)).isTrue();
        assertThat(RpmRange.possible(499, 20000)).isFalse();
        assertThat(RpmRange.possible(500, 20001)).isFalse();
        assertThat(RpmRange.possible(2600, 3099)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2600-5000", "5000-2600rpm", "2600-2900rpm", "100-5000rpm", "rpm"})
    void aRangeWithoutUnitOrWidthIsRefused(String typed) {
        assertThatThrownBy(() -> RpmRange.parse(typed)).isInstanceOf(IllegalArgumentException.class);
    }
}
