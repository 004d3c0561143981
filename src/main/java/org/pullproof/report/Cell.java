package org.pullproof.report;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.drawing.Drawing;
import org.pullproof.units.Inert;

/**
 * One cell of a table.
 *
 * @param words what people read; "–" where nothing was recorded
 * @param value the figure behind the words in the unit its column's key names, not rounded
 * @param picture drawn where there is room for drawings
 * @param besideWords whether the picture stands before the words, not in their place
 */
public record Cell(String words, OptionalDouble value, Optional<Drawing> picture, boolean besideWords) {
    private static final int BRIEF = 24;
    private static final String NOT_RECORDED = "–";

    public Cell {
        words = Inert.words(words);
    }

    static Cell of(String words, OptionalDouble value) {
        return new Cell(words.isBlank() ? NOT_RECORDED : words, value, Optional.empty(), true);
    }

    static Cell words(String words) {
        return of(words, OptionalDouble.empty());
    }

    static Cell words(Optional<String> words) {
        return words(words.orElse(""));
    }

    static Cell figure(String words, double value) {
        return of(words, OptionalDouble.of(value));
    }

    static Cell notRecorded() {
        return words("");
    }

    /** With a drawing that says the same as the words. */
    Cell drawn(Drawing drawing) {
        return new Cell(words, value, Optional.of(drawing), false);
    }

    /** With a mark before the words. */
    Cell marked(Drawing mark) {
        return new Cell(words, value, Optional.of(mark), true);
    }

    /** Whether there is anything in it. */
    public boolean recorded() {
        return !words.equals(NOT_RECORDED);
    }

    /** Whether the words are so few that they stay on one line. */
    public boolean brief() {
        return words.length() <= BRIEF;
    }

    /** Whether the words are to be read where drawings are shown. */
    public boolean wordsShown() {
        return besideWords || picture.isEmpty();
    }
}
