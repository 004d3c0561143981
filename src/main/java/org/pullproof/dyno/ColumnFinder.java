package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.pullproof.units.Unit;

/** Finds the header row of a pull file and what its columns tell. */
final class ColumnFinder {
    private final List<TableRow> rows;
    private final List<ColumnChoice> choices;
    private final int headerRow;
    private final List<Header> headers;
    private final boolean unitsBelow;

    private ColumnFinder(List<TableRow> rows, List<ColumnChoice> choices, int headerRow) {
        this.rows = rows;
        this.choices = choices;
        this.headerRow = headerRow;
        List<Header> own = headers(rows.get(headerRow));
        this.unitsBelow = headerRow + 1 < rows.size() && tellsUnits(rows.get(headerRow + 1), own);
        this.headers = unitsBelow ? withUnits(own, rows.get(headerRow + 1)) : own;
    }

    static Columns find(List<TableRow> rows, List<ColumnChoice> choices) throws UnreadablePullException {
        List<ColumnFinder> candidates = IntStream.range(0, rows.size())
                .limit(200) // a preamble is a page at most
                .filter(row -> hasWords(rows.get(row)))
                .mapToObj(row -> new ColumnFinder(rows, choices, row))
                .toList();
        if (candidates.isEmpty()) {
            throw new UnreadablePullException(
                    0, "the file has no header row; a row such as \"rpm,power_kW\" tells what the columns are.");
        }
        Optional<ColumnFinder> complete =
                candidates.stream().filter(ColumnFinder::complete).findFirst();
        return complete.isPresent()
                ? complete.get().columns()
                : mostLikely(candidates).columns();
    }

    /** The row to name the columns of, when no row has all that is needed: speed first, then the longest. */
    private static ColumnFinder mostLikely(List<ColumnFinder> candidates) {
        ColumnFinder best = candidates.get(0);
        for (ColumnFinder candidate : candidates) {
            best = candidate.likeliness() > best.likeliness() ? candidate : best;
        }
        return best;
    }

    private int likeliness() {
        return (having(Role.RPM).isEmpty() ? 0 : 1000) + named().size();
    }

    private static boolean hasWords(TableRow row) {
        return row.cells().stream().anyMatch(cell -> cell.strip().matches("\\p{L}.*"));
    }

    private static List<Header> headers(TableRow row) {
        return row.cells().stream().map(Header::of).toList();
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
        return Unit.named(cell.replaceAll("[\\[\\]()]", ""));
    }

    private static List<Header> withUnits(List<Header> headers, TableRow units) {
        return IntStream.range(0, headers.size())
                .mapToObj(i -> unitIn(units.cell(i))
                        .map(unit -> headers.get(i).withUnit(unit))
                        .orElse(headers.get(i)))
                .toList();
    }

    private boolean complete() {
        return !having(Role.RPM).isEmpty()
                && (!having(Role.POWER).isEmpty() || !having(Role.TORQUE).isEmpty());
    }

    private List<Integer> having(Role role) {
        Optional<ColumnChoice> choice = choice(role);
        return IntStream.range(0, headers.size())
                .filter(i -> choice.isPresent()
                        ? headers.get(i).isCalled(choice.get().header())
                        : headers.get(i).mayBe(role))
                .boxed()
                .toList();
    }

    private Optional<ColumnChoice> choice(Role role) {
        return choices.stream().filter(choice -> choice.role() == role).findFirst();
    }

    private Columns columns() throws UnreadablePullException {
        requireChosen();
        int rpm = only(Role.RPM);
        Role role = valueRole();
        int value = only(role);
        Unit unit = unit(role, value);
        if (!having(Role.RPM).isEmpty()) {
            unit(Role.RPM, rpm);
        }
        String header = headers.get(value).text();
        int first = headerRow + (unitsBelow ? 2 : 1);
        return new Columns(line(), first, rpm, value, role, unit, header, doubts(headers.get(value)));
    }

    private void requireChosen() throws UnreadablePullException {
        for (ColumnChoice choice : choices) {
            if (having(choice.role()).isEmpty()) {
                throw new UnreadablePullException(
                        line(), "the file has no column \"" + choice.header() + "\"; columns found: " + found() + ".");
            }
        }
    }

    /** Power where there is any, else torque; a person's choice of one of them goes before. */
    private Role valueRole() {
        boolean torqueChosen =
                choice(Role.TORQUE).isPresent() && choice(Role.POWER).isEmpty();
        return torqueChosen
                        || (having(Role.POWER).isEmpty() && !having(Role.TORQUE).isEmpty())
                ? Role.TORQUE
                : Role.POWER;
    }

    private int only(Role role) throws UnreadablePullException {
        List<Integer> columns = having(role);
        if (columns.isEmpty()) {
            String missing = role == Role.RPM ? "rpm" : "power or torque";
            throw new UnreadablePullException(
                    line(),
                    "the file has no " + missing + " column; columns found: " + found() + ". If one of them is it, say "
                            + example(role) + ".");
        }
        if (columns.size() > 1) {
            String which = columns.stream().map(i -> headers.get(i).text()).collect(Collectors.joining("\", \""));
            throw new UnreadablePullException(
                    line(),
                    "several columns may be the " + role.key() + ": \"" + which + "\". Say which with " + example(role)
                            + ".");
        }
        return columns.get(0);
    }

    private static String example(Role role) {
        return "--column " + role.key() + "=HEADER";
    }

    private Unit unit(Role role, int column) throws UnreadablePullException {
        Header header = headers.get(column);
        Optional<Unit> told = choice(role).flatMap(ColumnChoice::unit).or(header::unit);
        if (told.isPresent()) {
            return requireKind(role, header, told.get());
        }
        String strange = header.strangeUnit().orElse("");
        if (role == Role.RPM && strange.isEmpty()) {
            return Unit.RPM;
        }
        String units = Unit.of(role.dimension()).stream().map(Unit::symbol).collect(Collectors.joining(", "));
        String what = strange.isEmpty() ? " has no unit" : " has a unit not known here, " + strange;
        throw new UnreadablePullException(
                line(),
                "the column \"" + header.text() + "\"" + what + "; known are " + units + ". Say it with --column "
                        + role.key() + "=" + header.name() + ":"
                        + Unit.of(role.dimension()).get(0).symbol() + ".");
    }

    private Unit requireKind(Role role, Header header, Unit unit) throws UnreadablePullException {
        if (unit.dimension() != role.dimension()) {
            throw new UnreadablePullException(
                    line(),
                    "the column \"" + header.text() + "\" is in " + unit.symbol() + ", which is "
                            + unit.dimension().words() + ", not "
                            + role.dimension().words() + ".");
        }
        return unit;
    }

    private List<ImportProblem> doubts(Header value) {
        List<ImportProblem> doubts = new ArrayList<>();
        if (value.saysCorrected()) {
            doubts.add(new ImportProblem(
                    line(),
                    value.text(),
                    "the header says that the figures are corrected already; if so, take the file in with"
                            + " --already-corrected and the standard."));
        }
        return doubts;
    }

    private int line() {
        return rows.get(headerRow).line();
    }

    private List<String> named() {
        return headers.stream()
                .map(Header::text)
                .filter(text -> !text.isEmpty())
                .toList();
    }

    private String found() {
        return String.join(", ", named());
    }
}
