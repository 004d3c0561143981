package org.pullproof.app;

import java.util.List;
import org.pullproof.dyno.HowRead;
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
        PullTable table = table(pull.file().kept(), bytes, pull.how());
        if (pull.how().part() > table.pulls().size()) {
            throw new BadFileException(
                    pull.file().kept(),
                    "",
                    "pull " + pull.how().part() + " of the file is wanted, and it holds "
                            + table.pulls().size() + ".");
        }
        return table.pulls().get(pull.how().part() - 1);
    }

    /**
     * @param name of the file, for messages
     * @param how what a person said of its columns and of the drum
     * @throws BadFileException naming the file and the place in it
     */
    public PullTable table(String name, byte[] bytes, HowRead how) throws BadFileException {
        try {
            return PullTable.read(rows(name, bytes), how);
        } catch (UnreadablePullException unreadable) {
            throw new BadFileException(name, unreadable.place(), unreadable.sentence());
        }
    }

    /** The rows of a table, however it was written. */
    List<TableRow> rows(String name, byte[] bytes) throws BadFileException {
        return csv.rows(name, bytes).stream()
                .map(row -> new TableRow(row.line(), row.cells()))
                .toList();
    }
}
