package org.pullproof.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class QuotedTest {
    @Test
    void fortyCharactersAreQuotedWhole() {
        assertThat(Quoted.of("x".repeat(40))).isEqualTo("x".repeat(40));
    }

    @Test
    void oneMoreIsCutAndThatIsSeen() {
        assertThat(Quoted.of("x".repeat(41))).isEqualTo("x".repeat(40) + "…");
    }
}
