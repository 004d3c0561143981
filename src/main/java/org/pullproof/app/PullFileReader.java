package org.pullproof.app;

import java.util.List;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullTable;
import org.pullproof.dyno.TableRow;
import org.pullproof.dyno.Trace;
import org.pullproof.dyno.UnreadablePullException;
import org.pullproof.files.BadFileException;
import org.pullproof.files.CsvFile;

/** Reads pull files: bytes to a table, the table to samples. */
public final class PullFileReader implements PullReader {
    private final CsvFile csv;

    public PullFileReader(CsvFile csv) {
        this.csv = csv;
    }

    @Override
    public Trace read(Pull pull, byte[] bytes) throws BadFileException {
        return table(pull.file().kept(), bytes, pull.columns()).trace();
    }

    /**
     * @param name of the file, for messages
     * @param choices what a person said of its columns
     * @throws BadFileException naming the file and the place in it
     */
    public PullTable table(String name, byte[] bytes, List<ColumnChoice> choices) throws BadFileException {
        List<TableRow> rows = csv.rows(name, bytes).stream()
                .map(row -> new TableRow(row.line(), row.cells()))
                .toList();
        try {
            return PullTable.read(rows, choices);
        } catch (UnreadablePullException unreadable) {
            throw new BadFileException(name, unreadable.place(), unreadable.sentence());
        }
    }
}
