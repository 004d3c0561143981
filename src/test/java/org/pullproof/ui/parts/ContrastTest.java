package org.pullproof.ui.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.pullproof.drawing.Ink.BLUE;
import static org.pullproof.drawing.Ink.BLUEWASH;
import static org.pullproof.drawing.Ink.DESK;
import static org.pullproof.drawing.Ink.INK;
import static org.pullproof.drawing.Ink.INK2;
import static org.pullproof.drawing.Ink.INK3;
import static org.pullproof.drawing.Ink.ONFILL;
import static org.pullproof.drawing.Ink.RED;
import static org.pullproof.drawing.Ink.REDWASH;
import static org.pullproof.drawing.Ink.RULE2;
import static org.pullproof.drawing.Ink.SHEET;
import static org.pullproof.drawing.Ink.WELL;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.drawing.Ink;

/**
 * Everything can be read. Formula and limits: WCAG 2.1, "relative luminance", "contrast ratio", success criteria 1.4.3 (text, 4.5)
 * and 1.4.11 (borders of controls and marks, 3).
 */
class ContrastTest {
    private static final List<Ink> GROUNDS = List.of(SHEET, DESK, WELL, BLUEWASH, REDWASH);
    private static final List<Ink> TEXTS = List.of(INK, INK2, INK3, BLUE, RED);

    static Stream<Arguments> textsOnGrounds() {
        return pairs(TEXTS);
    }

    static Stream<Arguments> bordersOnGrounds() {
        return pairs(List.of(RULE2));
    }

    private static Stream<Arguments> pairs(List<Ink> inks) {
        return Stream.of(Palette.paper(), Palette.night())
                .flatMap(palette -> inks.stream()
                        .flatMap(ink -> GROUNDS.stream().map(ground -> Arguments.of(palette, ink, ground))));
    }

    @ParameterizedTest(name = "{1} on {2}")
    @MethodSource("textsOnGrounds")
    void textCanBeReadOnEveryGround(Palette palette, Ink text, Ink ground) {
        assertThat(Contrast.of(palette.of(text), palette.of(ground))).isGreaterThanOrEqualTo(4.5);
    }

    @ParameterizedTest(name = "{1} on {2}")
    @MethodSource("bordersOnGrounds")
    void bordersOfControlsCanBeSeenOnEveryGround(Palette palette, Ink border, Ink ground) {
        assertThat(Contrast.of(palette.of(border), palette.of(ground))).isGreaterThanOrEqualTo(3);
    }

    @Test
    void wordsOnTheBlueButtonCanBeReadOnPaperAndAtNight() {
        assertThat(Contrast.of(Palette.paper().of(ONFILL), Palette.paper().of(BLUE)))
                .isGreaterThanOrEqualTo(4.5);
        assertThat(Contrast.of(Palette.night().of(ONFILL), Palette.night().of(BLUE)))
                .isGreaterThanOrEqualTo(4.5);
    }

    @Test
    void wordsOnAChosenAnswerCanBeRead() {
        assertThat(Contrast.of(Palette.paper().of(SHEET), Palette.paper().of(INK)))
                .isGreaterThanOrEqualTo(4.5);
        assertThat(Contrast.of(Palette.night().of(SHEET), Palette.night().of(INK)))
                .isGreaterThanOrEqualTo(4.5);
    }

    /** WCAG 2.1, contrast ratio: black on white is 21. */
    @Test
    void blackOnWhiteHasTheGreatestContrastThereIs() {
        assertThat(Contrast.of(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
    }
}
