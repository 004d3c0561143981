package org.pullproof.ui.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class AsPeopleCountTest {
    private static List<String> sorted(String... words) {
        return List.of(words).stream().sorted(new AsPeopleCount()).toList();
    }

    @Test
    void figuresAreOrderedByTheirSizeWhateverTheirUnit() {
        assertThat(sorted("158 psi", "92 psi", "1,158 psi")).containsExactly("92 psi", "158 psi", "1,158 psi");
        assertThat(sorted("+2.7", "\u22121.4", "0.3")).containsExactly("\u22121.4", "0.3", "+2.7");
    }

    @Test
    void numberedNamesAreCounted() {
        assertThat(sorted("base-10", "base-2", "timing 32°-1", "base-1"))
                .containsExactly("base-1", "base-2", "base-10", "timing 32°-1");
    }

    @Test
    void otherWordsStandByTheirLetters() {
        assertThat(sorted("weather", "", "knock")).containsExactly("", "knock", "weather");
    }
}
