package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the figures of one row, or says why it is left out. */
final class SampleReader {
    private static final double SLOWEST_RPM = 100;
    private static final double FASTEST_RPM = 25000;

    private final Columns columns;
    private final DecimalMark mark;
    private final List<ImportProblem> problems;

    SampleReader(Columns columns, DecimalMark mark, List<ImportProblem> problems) {
        this.columns = columns;
        this.mark = mark;
        this.problems = problems;
    }

    Optional<PullTable.Sample> read(TableRow row) {
        OptionalDouble rpm = figure(row, columns.rpmColumn(), "rpm");
        OptionalDouble value = rpm.isPresent() ? figure(row, columns.valueColumn(), columns.header()) : rpm;
        if (value.isEmpty()) {
            return Optional.empty();
        }
        double speed = rpm.getAsDouble();
        if (speed < SLOWEST_RPM || speed > FASTEST_RPM) {
            leaveOut(row, "rpm", row.cell(columns.rpmColumn()) + " is no speed of an engine under load in rpm");
            return Optional.empty();
        }
        return Optional.of(
                new PullTable.Sample(row.line(), speed, columns.unit().toSi(value.getAsDouble())));
    }

    private OptionalDouble figure(TableRow row, int column, String header) {
        String cell = row.cell(column);
        OptionalDouble figure = mark.read(cell);
        if (figure.isEmpty()) {
            leaveOut(row, header, cell.isEmpty() ? "the cell is empty" : "\"" + shortened(cell) + "\" is not a figure");
        }
        return figure;
    }

    private void leaveOut(TableRow row, String header, String why) {
        problems.add(new ImportProblem(row.line(), header, why + "; the row is left out."));
    }

    private static String shortened(String cell) {
        return cell.length() > 40 ? cell.substring(0, 40) + "…" : cell;
    }
}
