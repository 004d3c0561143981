package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.pullproof.dyno.Columns.Column;
import org.pullproof.units.Quoted;

/** Finds the header row of a pull file and what its columns tell. */
final class ColumnFinder {
    private static final int MOST_NAMED = 30;

    /** A preamble is a page at most. */
    private static final int PREAMBLE_ROWS = 200;

    /** So many rows of a table tell its columns: the preamble, the header, units below it, and figures. */
    static final int HEAD_ROWS = PREAMBLE_ROWS + 50;

    private final List<TableRow> rows;
    private final HeaderRow header;
    private final ColumnUnits units;
    private final Need need;

    private ColumnFinder(List<TableRow> rows, List<ColumnChoice> choices, Need need, int row) {
        this.rows = rows;
        this.need = need;
        this.header = HeaderRow.of(rows, choices, row);
        this.units = new ColumnUnits(header);
    }

    static Columns find(List<TableRow> rows, List<ColumnChoice> choices, Need need) throws UnreadablePullException {
        List<ColumnFinder> candidates = IntStream.range(0, rows.size())
                .limit(PREAMBLE_ROWS)
                .filter(row -> HeaderRow.hasWords(rows.get(row)))
                .mapToObj(row -> new ColumnFinder(rows, choices, need, row))
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
        return (header.has(Role.RPM) ? 1000 : 0) + header.named().size();
    }

    private boolean complete() {
        return switch (need) {
            case POWER -> header.has(Role.RPM) && hasValue();
            case POWER_OR_ROLL -> header.has(Role.RPM) && (hasValue() || hasRoll());
            case ROLL -> hasRoll();
        };
    }

    private boolean hasValue() {
        return header.has(Role.POWER) || header.has(Role.TORQUE);
    }

    private boolean hasRoll() {
        return header.has(Role.TIME) && header.has(Role.ROLL);
    }

    private Columns columns() throws UnreadablePullException {
        header.requireChosen();
        Map<Role, Column> found = new EnumMap<>(Role.class);
        if (need != Need.ROLL || header.has(Role.RPM)) {
            put(found, Role.RPM);
        }
        Optional<Role> value = value();
        if (value.isPresent()) {
            put(found, value.get());
        } else {
            put(found, Role.TIME);
            put(found, Role.ROLL);
        }
        List<ImportProblem> doubts = new ArrayList<>();
        for (Role role : Role.values()) {
            if (!found.containsKey(role) && role != Role.POWER) {
                putIfClear(found, role, doubts);
            }
        }
        boolean corrected = value.map(found::get)
                .filter(column -> saysCorrected(column, doubts))
                .isPresent();
        int first = header.row() + (header.unitsBelow() ? 2 : 1);
        return new Columns(header.line(), first, found, value, corrected, doubts);
    }

    private void put(Map<Role, Column> found, Role role) throws UnreadablePullException {
        int index = only(role);
        found.put(role, new Column(index, units.needed(role, index), header.text(index)));
    }

    /** What is not needed is left out where it is not clear, and said. */
    private void putIfClear(Map<Role, Column> found, Role role, List<ImportProblem> doubts) {
        List<Integer> columns = header.having(role).stream()
                .filter(index -> found.values().stream().noneMatch(used -> used.index() == index))
                .toList();
        if (columns.size() > 1) {
            doubts.add(new ImportProblem(
                    header.line(),
                    role.words(),
                    "several columns may be the " + role.words() + ": \"" + texts(columns)
                            + "\"; none is used. Say which with " + example(role) + "."));
        } else if (columns.size() == 1) {
            int index = columns.get(0);
            units.maybe(role, index)
                    .ifPresentOrElse(
                            unit -> found.put(role, new Column(index, unit, header.text(index))),
                            () -> doubts.add(new ImportProblem(
                                    header.line(),
                                    header.text(index),
                                    units.missing(role, index) + " It is not used.")));
        }
    }

    private boolean saysCorrected(Column value, List<ImportProblem> doubts) {
        boolean says = header.saysCorrected(value.index())
                || rows.subList(0, header.row()).stream().anyMatch(ColumnFinder::preambleSaysCorrected);
        if (says) {
            doubts.add(new ImportProblem(
                    header.line(),
                    value.header(),
                    "the file says that its figures are corrected already. Answer with --already-corrected and the"
                            + " standard, or with --already-corrected none if they are as measured; until then the pull"
                            + " is not corrected and not compared."));
        }
        return says;
    }

    private static boolean preambleSaysCorrected(TableRow row) {
        String text = String.join(" ", row.cells()).toLowerCase(java.util.Locale.ROOT);
        return text.matches(".*\\bcorrect(ed|ion)\\b.*")
                && !text.matches(".*\\b(off|none|no|not|without|uncorrected)\\b.*");
    }

    /** Power where there is any, else torque, else empty for the roll; a person's choice of one of them goes before. */
    private Optional<Role> value() {
        if (need == Need.ROLL || (need == Need.POWER_OR_ROLL && !hasValue() && hasRoll())) {
            return Optional.empty();
        }
        boolean torqueChosen = header.choice(Role.TORQUE).isPresent()
                && header.choice(Role.POWER).isEmpty();
        boolean torqueOnly = !header.has(Role.POWER) && header.has(Role.TORQUE);
        return Optional.of(torqueChosen || torqueOnly ? Role.TORQUE : Role.POWER);
    }

    /** What is no table may have one column as long as the file, or thousands. */
    private static String inShort(List<String> headers) {
        String first = headers.stream().limit(MOST_NAMED).map(Quoted::of).collect(Collectors.joining(", "));
        return headers.size() > MOST_NAMED ? first + " and " + (headers.size() - MOST_NAMED) + " more" : first;
    }

    private int only(Role role) throws UnreadablePullException {
        List<Integer> columns = header.having(role);
        if (columns.isEmpty()) {
            throw new UnreadablePullException(
                    header.line(),
                    "the file has no " + missing(role) + " column; columns found: "
                            + inShort(header.named()) + ". If one of them is it, say " + example(role) + "."
                            + drumHint(role));
        }
        if (columns.size() > 1) {
            throw new UnreadablePullException(
                    header.line(),
                    "several columns may be the " + role.key() + ": \"" + texts(columns) + "\". Say which with "
                            + example(role) + ".");
        }
        return columns.get(0);
    }

    private String texts(List<Integer> columns) {
        return columns.stream().map(header::text).collect(Collectors.joining("\", \""));
    }

    private static String missing(Role role) {
        return switch (role) {
            case POWER -> "power or torque";
            case ROLL -> "roll speed";
            default -> role.key();
        };
    }

    private String drumHint(Role role) {
        return role == Role.POWER && hasRoll()
                ? " It has the speed of the roll against time: with the drum's inertia, --inertia, power follows from it."
                : "";
    }

    static String example(Role role) {
        return "--column " + role.key() + "=HEADER";
    }
}
