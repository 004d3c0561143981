package org.pullproof.dyno;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.pullproof.units.Unit;

/**
 * Where the figures of a pull stand.
 *
 * @param headerLine line of the header
 * @param firstRow index of the first row of figures
 * @param columns what is used, by role
 * @param value power or torque, whichever its power is taken from; empty if it comes from the roll
 * @param saysCorrected whether the file says that its power is corrected already
 * @param doubts what is to be minded about the columns
 */
record Columns(
        int headerLine,
        int firstRow,
        Map<Role, Column> columns,
        Optional<Role> value,
        boolean saysCorrected,
        List<ImportProblem> doubts) {
    Columns {
        columns = Map.copyOf(columns);
        doubts = List.copyOf(doubts);
    }

    /**
     * One column.
     *
     * @param index from 0
     * @param unit of its figures
     * @param header as it stands
     */
    record Column(int index, Unit unit, String header) {}

    /** The column of a role that is there. */
    Column column(Role role) {
        return Objects.requireNonNull(columns.get(role));
    }

    boolean has(Role role) {
        return columns.containsKey(role);
    }

    /** The roles without which a row says nothing. */
    List<Role> needed() {
        List<Role> speed = has(Role.RPM) ? List.of(Role.RPM) : List.of();
        List<Role> figures = value.map(List::of).orElse(List.of(Role.TIME, Role.ROLL));
        return java.util.stream.Stream.concat(speed.stream(), figures.stream()).toList();
    }
}
