package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.pullproof.dyno.Columns.Column;
import org.pullproof.units.Quoted;

/** Reads the rows below the header into a recording; a row that lacks a figure that is needed is left out and named. */
final class SampleReader {
    /** No channel of a dyno reaches it in SI units; a guard against a spoilt cell. */
    private static final double LARGEST = 1e12;

    private static final Pattern FIGURE_LIKE = Pattern.compile("[+\\-\u2212]?[\\d.,\u00a0 ']+");
    private static final double SLOWEST_RPM = 100;
    private static final double FASTEST_RPM = 25000;

    private final Columns columns;
    private final DecimalMark mark;
    private final RowProblems problems;
    private final List<Integer> lines = new ArrayList<>();
    private final Map<Role, List<Double>> figures = new EnumMap<>(Role.class);

    SampleReader(Columns columns, DecimalMark mark, RowProblems problems) {
        this.columns = columns;
        this.mark = mark;
        this.problems = problems;
        columns.columns().keySet().forEach(role -> figures.put(role, new ArrayList<>()));
    }

    /** What was read: the rows, and where each stands in the file. */
    static final class Read {
        private final int[] lines;
        private final Recording recording;

        private Read(int[] lines, Recording recording) {
            this.lines = lines;
            this.recording = recording;
        }

        int[] lines() {
            return lines.clone();
        }

        /** The rows; empty columns if none could be read. */
        Recording recording() {
            return recording;
        }

        Read with(Role role, double[] column) {
            return new Read(lines, recording.with(role, column));
        }
    }

    Read read(List<TableRow> rows) {
        rows.stream().filter(row -> !row.blank()).forEach(this::take);
        Map<Role, double[]> read = new EnumMap<>(Role.class);
        figures.forEach((role, list) ->
                read.put(role, list.stream().mapToDouble(Double::doubleValue).toArray()));
        return new Read(lines.stream().mapToInt(Integer::intValue).toArray(), Recording.of(read));
    }

    private void take(TableRow row) {
        if (columns.needed().stream().allMatch(role -> usable(row, role))) {
            lines.add(row.line());
            figures.forEach((role, list) -> list.add(figure(row, column(role))));
        }
    }

    /** In SI units; NaN where the cell holds no figure, or one too large to be measured. */
    private double figure(TableRow row, Column column) {
        double figure = column.unit().toSi(mark.read(row.cell(column.index())).orElse(Double.NaN));
        return Math.abs(figure) <= LARGEST ? figure : Double.NaN;
    }

    private boolean usable(TableRow row, Role role) {
        Column column = column(role);
        String cell = row.cell(column.index());
        double figure = figure(row, column);
        String header = role == Role.RPM ? "rpm" : column.header();
        if (Double.isNaN(figure)) {
            problems.leftOut(
                    row.line(),
                    header,
                    cell.isEmpty() ? "the cell is empty" : "\"" + Quoted.of(cell) + "\" is not a figure");
            return false;
        }
        if (role == Role.RPM && (figure < SLOWEST_RPM || figure > FASTEST_RPM)) {
            problems.leftOut(row.line(), header, cell + " is no speed of an engine under load in rpm");
            return false;
        }
        return true;
    }

    private Column column(Role role) {
        return Objects.requireNonNull(columns.columns().get(role));
    }

    /**
     * The decimal mark of the columns that are needed. Where every engine speed would then be a few turns a minute, the mark parts
     * thousands.
     */
    static DecimalMark mark(List<TableRow> rows, Columns columns) {
        DecimalMark guess = DecimalMark.of(columns.needed().stream()
                .flatMap(role -> figures(rows, columns, role).stream())
                .toList());
        List<String> speeds = columns.has(Role.RPM) ? figures(rows, columns, Role.RPM) : List.of();
        return fastest(speeds, guess) < SLOWEST_RPM && fastest(speeds, guess.opposite()) >= SLOWEST_RPM
                ? guess.opposite()
                : guess;
    }

    private static double fastest(List<String> speeds, DecimalMark mark) {
        return speeds.stream()
                .mapToDouble(cell -> mark.read(cell).orElse(0))
                .max()
                .orElse(SLOWEST_RPM);
    }

    private static List<String> figures(List<TableRow> rows, Columns columns, Role role) {
        int column = Objects.requireNonNull(columns.columns().get(role)).index();
        return rows.stream()
                .map(row -> row.cell(column))
                .filter(cell -> FIGURE_LIKE.matcher(cell).matches())
                .toList();
    }
}
