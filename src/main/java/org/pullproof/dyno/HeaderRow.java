package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.pullproof.units.Unit;

/**
 * A row of a table taken as its header.
 *
 * @param row index of the row
 * @param line where it stands in the file
 * @param headers its cells, with the units of the row below where those are
 * @param unitsBelow whether the row below it holds units
 * @param choices what a person said of the columns
 */
record HeaderRow(int row, int line, List<Header> headers, boolean unitsBelow, List<ColumnChoice> choices) {
    HeaderRow {
        headers = List.copyOf(headers);
        choices = List.copyOf(choices);
    }

    static HeaderRow of(List<TableRow> rows, List<ColumnChoice> choices, int row) {
        List<Header> own = rows.get(row).cells().stream().map(Header::of).toList();
        boolean below = row + 1 < rows.size() && tellsUnits(rows.get(row + 1), own);
        List<Header> headers = below ? withUnits(own, rows.get(row + 1)) : own;
        return new HeaderRow(row, rows.get(row).line(), headers, below, choices);
    }

    static boolean hasWords(TableRow row) {
        return row.cells().stream().map(String::strip).anyMatch(HeaderRow::isWord);
    }

    static boolean isWord(String cell) {
        return !cell.isEmpty() && Character.isLetter(cell.codePointAt(0));
    }

    /** Whether that row has a unit, for a column of the header that names none, and no figure. */
    private static boolean tellsUnits(TableRow row, List<Header> headers) {
        boolean figures = row.cells().stream().anyMatch(cell -> cell.strip().matches("[+\\-\u2212]?\\d+([.,]\\d*)?"));
        return !figures
                && IntStream.range(0, headers.size())
                        .anyMatch(i -> headers.get(i).unit().isEmpty()
                                && unitIn(row.cell(i)).isPresent());
    }

    private static Optional<Unit> unitIn(String cell) {
        return Unit.named(cell.replaceAll("[\\[\\]()]", "")).filter(unit -> unit != Unit.ONE);
    }

    private static List<Header> withUnits(List<Header> headers, TableRow units) {
        return IntStream.range(0, headers.size())
                .mapToObj(i -> unitIn(units.cell(i))
                        .map(unit -> headers.get(i).withUnit(unit))
                        .orElse(headers.get(i)))
                .toList();
    }

    /** The columns that may have a role; what a person chose is the only one. */
    List<Integer> having(Role role) {
        Optional<ColumnChoice> choice = choice(role);
        return IntStream.range(0, headers.size())
                .filter(i -> choice.isPresent()
                        ? headers.get(i).isCalled(choice.get().header())
                        : headers.get(i).mayBe(role) && !chosenForAnother(i, role))
                .boxed()
                .toList();
    }

    private boolean chosenForAnother(int column, Role role) {
        return choices.stream()
                .anyMatch(choice -> choice.role() != role && headers.get(column).isCalled(choice.header()));
    }

    boolean has(Role role) {
        return !having(role).isEmpty();
    }

    Optional<ColumnChoice> choice(Role role) {
        return choices.stream().filter(choice -> choice.role() == role).findFirst();
    }

    String text(int column) {
        return headers.get(column).text();
    }

    boolean saysCorrected(int column) {
        return headers.get(column).saysCorrected();
    }

    void requireChosen() throws UnreadablePullException {
        for (ColumnChoice choice : choices) {
            if (!has(choice.role())) {
                throw new UnreadablePullException(
                        line,
                        "the file has no column \"" + choice.header() + "\"; columns found: "
                                + String.join(", ", named()) + ".");
            }
        }
    }

    List<String> named() {
        return headers.stream()
                .map(Header::text)
                .filter(text -> !text.isEmpty())
                .toList();
    }
}
