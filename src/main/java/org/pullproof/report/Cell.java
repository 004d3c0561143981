package org.pullproof.report;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.drawing.Drawing;

/**
 * One cell of a table.
 *
 * @param words what people read; "–" where nothing was recorded
 * @param value the figure behind the words in the unit its column's key names, not rounded
 * @param drawing drawn in place of the words where there is room for drawings
 */
public record Cell(String words, OptionalDouble value, Optional<Drawing> drawing) {
    private static final String NOT_RECORDED = "–";

    public Cell {
        words = Inert.words(words);
    }

    static Cell words(String words) {
        return new Cell(words.isBlank() ? NOT_RECORDED : words, OptionalDouble.empty(), Optional.empty());
    }

    static Cell words(Optional<String> words) {
        return words(words.orElse(""));
    }

    static Cell figure(String words, double value) {
        return new Cell(words, OptionalDouble.of(value), Optional.empty());
    }

    static Cell notRecorded() {
        return words("");
    }

    Cell drawn(Drawing picture) {
        return new Cell(words, value, Optional.of(picture));
    }

    /** Whether there is anything in it. */
    public boolean recorded() {
        return !words.equals(NOT_RECORDED);
    }
}
