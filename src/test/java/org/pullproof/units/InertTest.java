package org.pullproof.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Controls: ECMA-48, C0 and C1. Marks that turn the direction of reading: Unicode UAX #9, table of explicit formatting characters
 * (U+202A to U+202E, U+2066 to U+2069) and implicit marks (U+200E, U+200F).
 */
class InertTest {
    @ParameterizedTest
    @ValueSource(
            ints = {
                0, 7, 8, 0x1b, 0x7f, 0x80, 0x9b, 0x200e, 0x200f, 0x202a, 0x202c, 0x202e, 0x2066, 0x2067, 0x2069, 0xd800
            })
    void whatSteersIsReplacedSoThatItIsSeen(int character) {
        assertThat(Inert.words("a" + new String(Character.toChars(character)) + "b"))
                .isEqualTo("a\ufffdb");
    }

    /** The neighbours of those ranges, and a joiner that scripts need (Unicode, chapter 23.2). */
    @ParameterizedTest
    @ValueSource(ints = {0x200d, 0x2010, 0x2027, 0x202f, 0x206f, 'é', 0x1f527})
    void whatDoesNotSteerStays(int character) {
        String text = "a" + new String(Character.toChars(character)) + "b";
        assertThat(Inert.words(text)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(ints = {'\n', '\r', '\t', 0x2028, 0x2029})
    void whatBreaksALineBecomesASpace(int character) {
        assertThat(Inert.words("a" + (char) character + "b")).isEqualTo("a b");
    }

    @Test
    void linesStayLines() {
        assertThat(Inert.lines("one\u001b\r\ntwo\tthree")).isEqualTo("one\ufffd\ntwo three");
    }
}
