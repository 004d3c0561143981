package org.pullproof.ui.search;

/** What kind of thing was found; in the order they stand where they answer equally well. */
public enum Group {
    DO("Do"),
    SESSION("In this session"),
    GUIDE("Words and methods");

    private final String words;

    Group(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
