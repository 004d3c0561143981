package org.pullproof.dyno;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A table as it stands before anyone said what its columns are: for a person who is asked.
 *
 * @param headers cells of the row that is most likely its header
 * @param rows the first rows below it
 */
public record TableLook(List<String> headers, List<List<String>> rows) {
    private static final int PREAMBLE_ROWS = 200;
    private static final int SHOWN_ROWS = 5;

    public TableLook {
        headers = List.copyOf(headers);
        rows = List.copyOf(rows);
    }

    /** The look of a table; empty if no row of it has words in two columns or more. */
    public static Optional<TableLook> of(List<TableRow> rows) {
        return rows.stream()
                .limit(PREAMBLE_ROWS)
                .filter(row -> words(row) > 1)
                .max(Comparator.comparingLong(TableLook::words).thenComparing(row -> -row.line()))
                .map(header -> below(rows, header));
    }

    private static long words(TableRow row) {
        return row.cells().stream().map(String::strip).filter(HeaderRow::isWord).count();
    }

    private static TableLook below(List<TableRow> rows, TableRow header) {
        List<List<String>> first = rows.subList(rows.indexOf(header) + 1, rows.size()).stream()
                .limit(SHOWN_ROWS)
                .map(TableRow::cells)
                .toList();
        return new TableLook(header.cells().stream().map(String::strip).toList(), first);
    }

    /** What tables of one origin share: their headers, in order, capitals and spaces aside. */
    public String shape() {
        return headers.stream()
                .map(header -> header.toLowerCase(Locale.ROOT).replaceAll("\\s+", " "))
                .collect(Collectors.joining("|"));
    }

    /** The column that may be the engine's speed by its header, if one may. */
    public Optional<String> speed() {
        return headers.stream()
                .filter(header -> Header.of(header).mayBe(Role.RPM))
                .findFirst();
    }
}
