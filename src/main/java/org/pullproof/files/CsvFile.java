package org.pullproof.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Bytes to a table, however a spreadsheet, logger or dyno wrote it: comma, semicolon or tab; UTF-8, UTF-16 with a byte order
 * mark, or else Windows-1252; quotes; any line end.
 */
public final class CsvFile {
    /**
     * @param line where the row begins, from 1
     * @param cells its cells from the left, as they stand
     */
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * Reads the rows that are not empty, all at once.
     *
     * @param name of the file, for messages
     * @throws BadFileException if it is empty, no text, or a quote does not close
     */
    public List<Row> rows(String name, byte[] bytes) throws BadFileException {
        List<Row> rows = new ArrayList<>();
        table(name, FileBytes.of(bytes)).each(rows::add);
        return rows;
    }

    /**
     * A table whose rows are read when they are asked for.
     *
     * @param name of the file, for messages
     * @throws BadFileException if it is empty, no text, or cannot be read
     */
    public CsvTable table(String name, FileBytes bytes) throws BadFileException {
        try {
            return new CsvTable(name, bytes, CsvLook.of(name, bytes));
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new BadFileException(name, "", Reason.of(failure) + ".");
        }
    }
}
