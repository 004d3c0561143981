package org.pullproof.units;

import java.util.stream.Collectors;

/**
 * Makes words that came from outside harmless: characters that no page may hold, that steer a terminal or that turn the direction
 * of reading are replaced by {@code U+FFFD}, so that a reader sees something stood there.
 */
public final class Inert {
    private static final int REPLACEMENT = 0xfffd;

    private Inert() {}

    /** Words on one line, without characters that steer. */
    public static String words(String text) {
        StringBuilder harmless = new StringBuilder(text.length());
        text.codePoints().map(Inert::harmless).forEach(harmless::appendCodePoint);
        return harmless.toString();
    }

    /** Words on several lines, each as {@link #words}. */
    public static String lines(String text) {
        return text.lines().map(Inert::words).collect(Collectors.joining("\n"));
    }

    private static int harmless(int character) {
        if (character == '\n' || character == '\r' || character == '\t') {
            return ' ';
        }
        return switch (Character.getType(character)) {
            case Character.CONTROL, Character.SURROGATE, Character.UNASSIGNED -> REPLACEMENT;
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> ' ';
            case Character.FORMAT -> turnsDirection(character) ? REPLACEMENT : character;
            default -> character;
        };
    }

    private static boolean turnsDirection(int character) {
        return character == 0x200e
                || character == 0x200f
                || (character >= 0x202a && character <= 0x202e)
                || (character >= 0x2066 && character <= 0x2069);
    }
}
