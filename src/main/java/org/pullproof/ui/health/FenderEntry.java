package org.pullproof.ui.health;

import java.util.Optional;
import org.pullproof.health.Reading;
import org.pullproof.units.Unit;

/**
 * What is being typed at one cylinder. Immutable.
 *
 * @param text in the one field
 * @param kept whether the text is on the disk already: the next digit then begins a correction
 * @param repeats whether a further reading is taken beside the one there is
 * @param wet whether oil is in the cylinder
 * @param firstStroke whether the field takes the first stroke now
 * @param first the first stroke, as it will be recorded
 */
record FenderEntry(
        String text, boolean kept, boolean repeats, boolean wet, boolean firstStroke, Optional<String> first) {

    static FenderEntry empty(boolean wet) {
        return new FenderEntry("", false, false, wet, false, Optional.empty());
    }

    /** A reading that is kept. */
    static FenderEntry of(Reading reading, boolean wet, Optional<Unit> unit) {
        Optional<String> first = reading instanceof Reading.Compression compression
                ? compression.first().map(Object::toString)
                : Optional.empty();
        return new FenderEntry(FenderFigures.of(reading, unit), true, false, wet, false, first);
    }

    FenderEntry typed(char digit, int most) {
        String begun = kept ? "" : text;
        return begun.length() < most ? with(begun + digit) : this;
    }

    FenderEntry with(String typed) {
        return new FenderEntry(typed, false, repeats, wet, firstStroke, first);
    }

    FenderEntry erased() {
        return with(text.isEmpty() ? "" : text.substring(0, text.length() - 1));
    }

    FenderEntry again() {
        return new FenderEntry("", false, true, wet, false, Optional.empty());
    }

    FenderEntry otherWet() {
        return new FenderEntry(kept ? "" : text, false, false, !wet, firstStroke, kept ? Optional.empty() : first);
    }

    FenderEntry askFirst() {
        return new FenderEntry("", false, repeats, wet, true, first);
    }

    FenderEntry withFirst(String recorded) {
        return new FenderEntry("", false, repeats, wet, false, Optional.of(recorded));
    }

    FenderEntry withoutFirst() {
        return new FenderEntry("", false, repeats, wet, false, Optional.empty());
    }
}
