package org.pullproof.app;

import java.util.List;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.PullTable;
import org.pullproof.dyno.TableRow;
import org.pullproof.dyno.TableRows;
import org.pullproof.dyno.UnreadablePullException;
import org.pullproof.files.BadFileException;
import org.pullproof.files.CsvFile;
import org.pullproof.files.CsvTable;
import org.pullproof.files.FileBytes;

/** Reads pull files: bytes to a table, the table row by row to samples. */
public final class PullFileReader implements PullReader {
    private final CsvFile csv;

    public PullFileReader(CsvFile csv) {
        this.csv = csv;
    }

    @Override
    public PullTable table(String name, FileBytes bytes, HowRead how) throws BadFileException {
        try {
            return PullTable.read(rows(name, bytes), how);
        } catch (UnreadablePullException unreadable) {
            throw new BadFileException(name, unreadable.place(), unreadable.sentence());
        }
    }

    private TableRows<BadFileException> rows(String name, FileBytes bytes) throws BadFileException {
        CsvTable table = csv.table(name, bytes);
        return taker -> table.each(row -> taker.test(new TableRow(row.line(), row.cells())));
    }

    /**
     * The first rows of a table, however it was written.
     *
     * @param name of the file, for messages
     */
    List<TableRow> head(String name, FileBytes bytes, int most) throws BadFileException {
        return rows(name, bytes).head(most);
    }
}
