package org.pullproof.ui.health;

import java.util.Map;
import org.pullproof.health.Reading;

/** Reads what was typed by the same rules as a table of readings. */
@FunctionalInterface
public interface ReadingRules {
    /**
     * @param cells what was typed by column, see {@link EntryColumn#key()}, besides {@code test} and {@code cylinder}; what is not
     *     there is not recorded
     * @throws RefusedEntry naming the column and what would be right
     */
    Reading read(Map<String, String> cells);

    /** An entry that cannot be taken in. */
    final class RefusedEntry extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        private final String column;

        public RefusedEntry(String column, String sentence) {
            super(sentence);
            this.column = column;
        }

        /** The column the sentence is about; one of the cells' names, or empty. */
        public String column() {
            return column;
        }
    }
}
