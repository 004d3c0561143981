package org.pullproof.ui.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pullproof.drawing.Ink;

/** Canvases and controls have the same colours. */
class PaletteTest {

    @ParameterizedTest
    @EnumSource(Ink.class)
    void paperIsTheSameOnCanvasesAndControls(Ink ink) {
        assertThat(Palette.paper().of(ink)).isEqualTo(inStylesheet(".root {", ink));
    }

    @ParameterizedTest
    @EnumSource(Ink.class)
    void nightIsTheSameOnCanvasesAndControls(Ink ink) {
        assertThat(Palette.night().of(ink)).isEqualTo(inStylesheet(".root.night {", ink));
    }

    @Test
    void noColourStandsInTheStylesheetOutsideTheTokens() {
        String rest = stylesheet().replaceAll("(?s)\\.root(\\.night)? \\{.*?\\}", "");
        assertThat(rest).doesNotContainPattern("#[0-9A-Fa-f]{3}").doesNotContainPattern("rgba?\\(");
    }

    private static Color inStylesheet(String block, Ink ink) {
        String sheet = stylesheet();
        String tokens = sheet.substring(sheet.indexOf(block));
        Matcher token = Pattern.compile("-pp-" + ink.name().toLowerCase(Locale.ROOT) + ": (#[0-9A-F]{6});")
                .matcher(tokens);
        assertThat(token.find()).as("token of %s after %s", ink, block).isTrue();
        return Color.web(token.group(1));
    }

    private static String stylesheet() {
        try (InputStream css = PaletteTest.class.getResourceAsStream("/org/pullproof/ui/pullproof.css")) {
            return new String(Objects.requireNonNull(css).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
