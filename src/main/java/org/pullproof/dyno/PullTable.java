package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of one pull, read: its samples, and what was left out.
 *
 * @param trace the samples in order of rising speed
 * @param problems rows that were left out, and doubts, in order of the lines
 */
public record PullTable(Trace trace, List<ImportProblem> problems) {
    public PullTable {
        problems = List.copyOf(problems);
    }

    /**
     * Finds the header row (after any preamble), the columns of speed and of power or torque with their units, and reads
     * what follows. Power is taken where both are there; from torque alone it is torque × 2π/60 × speed. Rows without a
     * figure, and samples whose speed does not rise, are left out and named.
     *
     * @param rows the rows of the file
     * @param choices what a person said of the columns; goes before what the headers say
     * @throws UnreadablePullException if there is no such table, or it holds several pulls
     */
    public static PullTable read(List<TableRow> rows, List<ColumnChoice> choices) throws UnreadablePullException {
        Columns columns = ColumnFinder.find(rows, choices);
        List<ImportProblem> problems = new ArrayList<>(columns.doubts());
        List<Sample> samples = new RisingSamples(problems).of(figures(rows, columns, problems));
        if (samples.size() < 2) {
            throw new UnreadablePullException(
                    columns.headerLine(),
                    "fewer than two rows below the header have figures for speed and "
                            + columns.role().key() + ".");
        }
        return new PullTable(trace(samples, columns.role()), problems);
    }

    private static List<Sample> figures(List<TableRow> rows, Columns columns, List<ImportProblem> problems) {
        List<TableRow> below = rows.subList(columns.firstRow(), rows.size());
        DecimalMark mark = DecimalMark.of(below.stream()
                .flatMap(row -> List.of(row.cell(columns.rpmColumn()), row.cell(columns.valueColumn())).stream())
                .filter(cell -> cell.matches("[+\\-\u2212]?[\\d.,\u00a0 ']+"))
                .toList());
        SampleReader reader = new SampleReader(columns, mark, problems);
        List<Sample> samples = new ArrayList<>();
        below.stream()
                .filter(row -> !row.blank())
                .forEach(row -> reader.read(row).ifPresent(samples::add));
        return samples;
    }

    private static Trace trace(List<Sample> samples, Role role) {
        double[] rpm = samples.stream().mapToDouble(Sample::rpm).toArray();
        double[] watt = samples.stream()
                .mapToDouble(
                        sample -> role == Role.POWER ? sample.value() : sample.value() * Math.PI / 30 * sample.rpm())
                .toArray();
        return Trace.of(rpm, watt);
    }

    /** One row of figures in SI: power in W, or torque in N·m. */
    record Sample(int line, double rpm, double value) {}
}
