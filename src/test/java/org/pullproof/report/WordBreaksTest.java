package org.pullproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordBreaksTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "Between −1.9 and −0.9; Between |−1.9 |and |−0.9",
                "TM 1-1500; TM |1-|1500",
                "timing 32°; timing |32°",
                "(-3 to 4); (-3 |to |4)",
                "word; word"
            })
    void linesEndAfterSpacesAndInnerHyphens(String words, String parts) {
        assertThat(String.join("|", parts(words))).isEqualTo(parts);
    }

    @Test
    void aNoBreakSpaceHoldsFigureAndUnit() {
        assertThat(parts("5\u00a0% of it")).containsExactly("5\u00a0% ", "of ", "it");
    }

    @Test
    void noWordsHaveNoBreak() {
        assertThat(parts("")).isEmpty();
    }

    private static List<String> parts(String words) {
        WordBreaks breaks = new WordBreaks();
        breaks.setText(words);
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int to = breaks.next(); to >= 0; to = breaks.next()) {
            parts.add(words.substring(from, to));
            from = to;
        }
        return parts;
    }
}
