package org.pullproof.dyno;

import java.util.List;

/**
 * One row of a table, however it was written.
 *
 * @param line where it begins in the file, from 1
 * @param cells its cells from the left
 */
public record TableRow(int line, List<String> cells) {
    public TableRow {
        cells = List.copyOf(cells);
    }

    /** The cell without spaces around it; empty where the row is too short. */
    String cell(int column) {
        return column < cells.size() ? cells.get(column).strip() : "";
    }

    boolean blank() {
        return cells.stream().allMatch(String::isBlank);
    }
}
