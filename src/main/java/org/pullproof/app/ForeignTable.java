package org.pullproof.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.PullTable;
import org.pullproof.dyno.TableLook;
import org.pullproof.dyno.TableRow;
import org.pullproof.dyno.TableRows;
import org.pullproof.dyno.Trace;
import org.pullproof.dyno.UnreadablePullException;

/** A table whose headers don't tell which columns make a pull; a person is shown it and asked. Immutable. */
public final class ForeignTable {
    /** So many rows are shown to a person: far more than an afternoon of pulls, and they are held in memory. */
    static final int MOST_ROWS = 50_000;

    private final Path file;
    private final List<TableRow> rows;
    private final TableLook look;
    private final String problem;

    /**
     * @param problem why it could not be read as it stands
     */
    ForeignTable(Path file, List<TableRow> rows, TableLook look, String problem) {
        this.file = file;
        this.rows = List.copyOf(rows);
        this.look = look;
        this.problem = problem;
    }

    /**
     * What would come of it.
     *
     * @param pulls that would be read, empty if none could
     * @param problem why none could
     * @param whole whether the pulls are all of the file; else those of its first {@value #MOST_ROWS} rows
     */
    public record Preview(List<Trace> pulls, Optional<String> problem, boolean whole) {
        public Preview {
            pulls = List.copyOf(pulls);
        }
    }

    public Path file() {
        return file;
    }

    public TableLook look() {
        return look;
    }

    /** Why it could not be read as it stands, one sentence. */
    public String problem() {
        return problem;
    }

    /** Reads it by what a person says of its columns; nothing is kept. */
    public Preview preview(List<ColumnChoice> columns) {
        boolean whole = rows.size() < MOST_ROWS;
        try {
            return new Preview(
                    PullTable.read(TableRows.of(rows), HowRead.by(columns)).pulls(), Optional.empty(), whole);
        } catch (UnreadablePullException unreadable) {
            return new Preview(List.of(), Optional.of(unreadable.sentence()), whole);
        }
    }
}
