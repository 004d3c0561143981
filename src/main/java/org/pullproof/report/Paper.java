package org.pullproof.report;

/** Paper a report is printed on; lengths in px, 96 an inch. What is printed is as wide on both. */
public enum Paper {
    A4("a4", "A4", 794),
    LETTER("letter", "letter", 816);

    /** Width of everything between the margins. */
    static final double CONTENT_WIDTH = 698;

    private final String key;
    private final String css;
    private final int width;

    Paper(String key, String css, int width) {
        this.key = key;
        this.css = css;
        this.width = width;
    }

    /** Its name on the command line. */
    public String key() {
        return key;
    }

    /** Its name in a style sheet. */
    String css() {
        return css;
    }

    /** Margin on either side. */
    double sideMargin() {
        return (width - CONTENT_WIDTH) / 2;
    }
}
