package org.pullproof.ui.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One line of the list: the name of a group, or something found. */
sealed interface SearchLine {
    /** The name of a group, which cannot be chosen. */
    record Head(Group group) implements SearchLine {}

    /** Something that can be chosen. */
    record Hit(Found what) implements SearchLine {}

    default Optional<Found> found() {
        return this instanceof Hit hit ? Optional.of(hit.what()) : Optional.empty();
    }

    /** The lines of what was found, each group under its name. */
    static List<SearchLine> of(List<Found> found) {
        List<SearchLine> lines = new ArrayList<>();
        Optional<Group> last = Optional.empty();
        for (Found one : found) {
            if (last.filter(one.group()::equals).isEmpty()) {
                lines.add(new Head(one.group()));
            }
            last = Optional.of(one.group());
            lines.add(new Hit(one));
        }
        return lines;
    }

    /** The line of the first thing found, −1 if there is none. */
    static int firstFound(List<SearchLine> lines) {
        return lines.isEmpty() ? -1 : 1;
    }

    /** The line of the next thing found in a direction; the same at an end. */
    static int next(List<SearchLine> lines, int from, int by) {
        for (int line = from + by; line >= 0 && line < lines.size(); line += by) {
            if (lines.get(line) instanceof Hit) {
                return line;
            }
        }
        return from;
    }
}
