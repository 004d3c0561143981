package org.pullproof.advice;

/**
 * How far a stage is.
 *
 * @param stage which
 * @param progress not begun, under way, done
 * @param words three words of state: "cylinder 6 in doubt"
 */
public record StageProgress(Stage stage, Progress progress, String words) {
    /** How far; word first, shape second (look.md 5). */
    public enum Progress {
        NOT_BEGUN,
        UNDER_WAY,
        DONE
    }
}
