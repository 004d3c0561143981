package org.pullproof.tuneup;

import java.util.Set;
import java.util.TreeSet;

/**
 * What the owner noted of a part that is off the car.
 *
 * @param part its name
 * @param note where it lies, which bolt belongs where; may be empty
 * @param fitted cylinders on which it is back already, where every cylinder has one
 */
public record ShelfNote(String part, String note, Set<Integer> fitted) {
    public ShelfNote {
        note = note.strip();
        fitted = java.util.Collections.unmodifiableSet(new TreeSet<>(fitted));
    }

    static ShelfNote of(String part) {
        return new ShelfNote(part, "", Set.of());
    }

    ShelfNote withNote(String words) {
        return new ShelfNote(part, words, fitted);
    }

    ShelfNote withFitted(Set<Integer> cylinders) {
        return new ShelfNote(part, note, cylinders);
    }

    /** Whether it says nothing. */
    boolean isEmpty() {
        return note.isEmpty() && fitted.isEmpty();
    }
}
