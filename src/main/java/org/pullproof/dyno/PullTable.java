package org.pullproof.dyno;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A table of one or more pulls, read: their samples, and what was left out.
 *
 * @param pulls each with its samples in order of rising speed, in the order of the file; at least one
 * @param told what the file says of when it was made
 * @param problems rows that were left out, and doubts
 */
public record PullTable(List<Trace> pulls, FileTime told, List<ImportProblem> problems) {
    public PullTable {
        pulls = List.copyOf(pulls);
        problems = List.copyOf(problems);
    }

    /** The first pull. */
    public Trace trace() {
        return pulls.get(0);
    }

    /** Reads a table whose headers, with what a person said of them, tell everything. */
    static PullTable read(List<TableRow> rows, List<ColumnChoice> choices) throws UnreadablePullException {
        return read(TableRows.of(rows), HowRead.by(choices));
    }

    /**
     * Finds the header row (after any preamble), the columns of speed and of power or torque with their units, and reads what
     * follows. Power is taken where both are there; from torque alone it is torque × 2π/60 × speed; with neither, and a drum told, it
     * is that which turns the roll, see {@link DrumPower}. Idle before a pull and coasting after it are cut away; rows without a
     * figure, and samples whose speed does not rise, are left out. All that is left out is named.
     *
     * @param rows the rows of the file; only the figures of the columns that are used are held
     * @param <X> what may go wrong in reading the rows
     * @param how what a person said of the columns and of the drum; goes before what the headers say
     * @throws UnreadablePullException if there is no such table
     */
    public static <X extends Exception> PullTable read(TableRows<X> rows, HowRead how)
            throws UnreadablePullException, X {
        List<TableRow> head = rows.head(ColumnFinder.HEAD_ROWS);
        Columns columns =
                ColumnFinder.find(head, how.columns(), how.drum().isPresent() ? Need.POWER_OR_ROLL : Need.POWER);
        SampleReader.Read read = SampleReader.read(rows, head, columns);
        List<Trace> pulls = new PullMaker(columns, how.drum(), RollLoss.NOT_MEASURED, read).pulls();
        if (pulls.isEmpty()) {
            throw new UnreadablePullException(
                    columns.headerLine(),
                    "fewer than two rows below the header have figures for speed and "
                            + columns.value().map(Role::key).orElse("roll speed") + ", with the speed rising.");
        }
        List<ImportProblem> all = new ArrayList<>(columns.doubts());
        all.addAll(read.problems().all());
        return new PullTable(pulls, FileTime.in(head.subList(0, columns.firstRow())), all);
    }

    /** When the file says that its first pull was made, as far as it does. */
    public Optional<LocalDateTime> time(LocalDateTime otherwise) {
        return told.at(otherwise);
    }
}
