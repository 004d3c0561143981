package org.pullproof.health;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.engine.EngineProfile;
import org.pullproof.units.Quoted;

/**
 * A table of readings, as written on a phone or a sheet: a header with the names of the columns, then one reading a row. All
 * rows are taken in or none. An empty cell is "not recorded", never a default.
 */
public final class ReadingSheet {
    private final EngineProfile profile;
    private final LocalDateTime time;

    /**
     * @param profile the engine, for its cylinders
     * @param time when the readings are taken in
     */
    public ReadingSheet(EngineProfile profile, LocalDateTime time) {
        this.profile = profile;
        this.time = time;
    }

    /**
     * One row of the table.
     *
     * @param line its line in the file, for messages
     * @param cells its cells as text
     */
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * Something wrong in the table.
     *
     * @param line the line in the file
     * @param column name of the column, empty if it is the whole row
     * @param message a sentence that says what would be right
     */
    public record Problem(int line, String column, String message) {}

    /** What was read: readings without a problem, or problems without a reading. */
    public record Taken(List<Reading> readings, List<Problem> problems) {
        public Taken {
            readings = List.copyOf(readings);
            problems = List.copyOf(problems);
            if (!problems.isEmpty() && !readings.isEmpty()) {
                throw new IllegalArgumentException("Readings are taken in all or none");
            }
        }
    }

    /**
     * Reads a table.
     *
     * @param rows the header first
     */
    public Taken read(List<Row> rows) {
        if (rows.isEmpty()) {
            return refused(List.of(new Problem(
                    1, "", "The table is empty; its first row names the columns: " + SheetColumn.names() + ".")));
        }
        Row head = rows.get(0);
        List<Problem> problems = new ArrayList<>(headProblems(head));
        return problems.isEmpty() ? readRows(head, rows.subList(1, rows.size())) : refused(problems);
    }

    private static Taken refused(List<Problem> problems) {
        return new Taken(List.of(), problems);
    }

    private static List<Problem> headProblems(Row head) {
        List<Problem> problems = new ArrayList<>();
        List<SheetColumn> seen = new ArrayList<>();
        for (String name : head.cells()) {
            Optional<SheetColumn> column = SheetColumn.named(name);
            if (column.isEmpty()) {
                problems.add(new Problem(
                        head.line(),
                        Quoted.of(name.strip()),
                        name.isBlank()
                                ? "A column has no name; the columns are " + SheetColumn.names() + "."
                                : "There is no column \"" + Quoted.of(name.strip()) + "\"; the columns are "
                                        + SheetColumn.names() + "."));
            } else if (seen.contains(column.get())) {
                problems.add(new Problem(head.line(), column.get().key(), "The column stands twice; keep one."));
            } else {
                seen.add(column.get());
            }
        }
        for (SheetColumn needed : List.of(SheetColumn.TEST, SheetColumn.VALUE)) {
            if (problems.isEmpty() && !seen.contains(needed)) {
                problems.add(new Problem(
                        head.line(),
                        needed.key(),
                        "The column is missing; a table of readings has at least the columns test and value."));
            }
        }
        return problems;
    }

    private Taken readRows(Row head, List<Row> rows) {
        List<SheetColumn> columns = head.cells().stream()
                .flatMap(name -> SheetColumn.named(name).stream())
                .toList();
        List<Reading> readings = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Row row : rows) {
            if (row.cells().stream().allMatch(String::isBlank)) {
                continue;
            }
            if (row.cells().size() > columns.size()) {
                problems.add(tooManyCells(row, columns.size()));
                continue;
            }
            SheetRow cells = new SheetRow(row.line(), byColumn(columns, row));
            new RowReader(profile, time, cells).read().ifPresent(readings::add);
            problems.addAll(cells.problems());
        }
        if (readings.isEmpty() && problems.isEmpty()) {
            problems.add(new Problem(head.line(), "", "There is no reading below the header."));
        }
        return problems.isEmpty() ? new Taken(readings, List.of()) : refused(problems);
    }

    private static Problem tooManyCells(Row row, int columns) {
        return new Problem(
                row.line(),
                "",
                "The row has " + row.cells().size() + " cells, the header names " + columns
                        + " columns; a text with a separator in it stands in quotes.");
    }

    private static Map<SheetColumn, String> byColumn(List<SheetColumn> columns, Row row) {
        Map<SheetColumn, String> cells = new EnumMap<>(SheetColumn.class);
        for (int i = 0; i < row.cells().size(); i++) {
            cells.put(columns.get(i), row.cells().get(i).strip());
        }
        return cells;
    }
}
