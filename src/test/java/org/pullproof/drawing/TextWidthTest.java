package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.util.Objects;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the fonts themselves, measured by AWT. */
class TextWidthTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "NARROW|400|IBMPlexSansCondensed-Regular|band power, 2,600 to 5,000",
                "NARROW|400|IBMPlexSansCondensed-Regular|fires 1 8 4 3 6 5 7 2, every 90°",
                "NARROW|400|IBMPlexSansCondensed-Regular|5 and 7: keep these wires apart",
                "NARROW|400|IBMPlexSansCondensed-Regular|$1,100 · $2,150",
                "NARROW|600|IBMPlexSansCondensed-SemiBold|Power at the wheels, hp",
                "NARROW|600|IBMPlexSansCondensed-SemiBold|Torque at the wheels, lb-ft",
                "NARROW|600|IBMPlexSansCondensed-SemiBold|Difference from as found, %",
                "NARROW|600|IBMPlexSansCondensed-SemiBold|drift −0.05 % a pull",
                "NARROW|600|IBMPlexSansCondensed-SemiBold|timing 32°, jets two sizes up"
            })
    void theEstimateAgreesWithTheFont(Typeface face, int weight, String file, String words) throws Exception {
        double measured = font(file)
                .getStringBounds(words, new FontRenderContext(null, true, true))
                .getWidth();

        assertThat(TextWidth.of(words, face, 12, weight)).isCloseTo(measured, Percentage.withPercentage(12));
    }

    private static Font font(String file) throws Exception {
        try (InputStream ttf = TextWidthTest.class.getResourceAsStream("/org/pullproof/fonts/" + file + ".ttf")) {
            return Font.createFont(Font.TRUETYPE_FONT, Objects.requireNonNull(ttf, file))
                    .deriveFont(12f);
        }
    }
}
