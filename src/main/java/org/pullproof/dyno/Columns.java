package org.pullproof.dyno;

import java.util.List;
import org.pullproof.units.Unit;

/**
 * Where the figures of a pull stand.
 *
 * @param headerLine line of the header
 * @param firstRow index of the first row of figures
 * @param rpmColumn index of the column of engine speed
 * @param valueColumn index of the column of power or torque
 * @param role which of the two
 * @param unit of that column
 * @param header of that column
 * @param doubts what is to be minded about the columns
 */
record Columns(
        int headerLine,
        int firstRow,
        int rpmColumn,
        int valueColumn,
        Role role,
        Unit unit,
        String header,
        List<ImportProblem> doubts) {
    Columns {
        doubts = List.copyOf(doubts);
    }
}
