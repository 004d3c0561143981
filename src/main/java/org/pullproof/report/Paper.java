package org.pullproof.report;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.units.UnitSystem;

/** Paper a report is printed on; lengths in px, 96 an inch. What is printed is as wide on both, and lower on Letter. */
public enum Paper {
    A4("a4", "A4", 794, 1123),
    LETTER("letter", "letter", 816, 1056);

    /** Width of everything between the margins. */
    static final double CONTENT_WIDTH = 698;

    private final String key;
    private final String css;
    private final int width;
    private final int height;

    Paper(String key, String css, int width, int height) {
        this.key = key;
        this.css = css;
        this.width = width;
        this.height = height;
    }

    /** Its name on the command line. */
    public String key() {
        return key;
    }

    /** Its words. */
    public String words() {
        return this == A4 ? "A4" : "Letter";
    }

    /** The paper of that name on the command line. */
    public static Optional<Paper> named(String key) {
        return Arrays.stream(values()).filter(paper -> paper.key.equals(key)).findFirst();
    }

    /** {@code a4, letter}. */
    public static String keys() {
        return Arrays.stream(values()).map(Paper::key).collect(Collectors.joining(", "));
    }

    /** What lies in the printer where these units are used; common practice, no source. */
    public static Paper usualFor(UnitSystem units) {
        return units == UnitSystem.US ? LETTER : A4;
    }

    /** Its name in a style sheet. */
    String css() {
        return css;
    }

    /** How much higher it is than the lower of the two. */
    int higherThanLetter() {
        return height - LETTER.height;
    }

    /** Margin on either side. */
    double sideMargin() {
        return (width - CONTENT_WIDTH) / 2;
    }
}
