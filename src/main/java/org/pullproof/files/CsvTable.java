package org.pullproof.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.function.Predicate;
import org.pullproof.files.CsvFile.Row;

/** A table of text whose rows are read when they are asked for and held by nobody here. */
public final class CsvTable {
    private final String name;
    private final FileBytes bytes;
    private final CsvLook look;

    CsvTable(String name, FileBytes bytes, CsvLook look) {
        this.name = name;
        this.bytes = bytes;
        this.look = look;
    }

    /**
     * Hands over the rows that are not empty, from the first.
     *
     * @param taker takes a row and says whether it wants another
     * @throws BadFileException if it is no table, or a quote does not close; rows before it have then been handed over
     */
    public void each(Predicate<Row> taker) throws BadFileException {
        try (Reader text = look.text(bytes);
                CsvReader<CsvRecord> records = records(text)) {
            boolean onALine = true;
            int line = 0;
            for (CsvRecord record : records) {
                line = (int) record.getStartingLineNumber();
                onALine = !look.oddQuotes() || onALine(record);
                if (!taker.test(new Row(line, record.getFields()))) {
                    return;
                }
            }
            requireClosedQuotes(line, onALine);
        } catch (BadFileException known) {
            throw known;
        } catch (CsvParseException noTable) {
            throw new BadFileException(name, "", "the file is not a table of text; save it as CSV, one row a line.");
        } catch (UncheckedIOException failure) {
            throw unread(Objects.requireNonNull(failure.getCause()));
        } catch (IOException failure) {
            throw unread(failure);
        }
    }

    private BadFileException unread(IOException failure) {
        return new BadFileException(name, "", Reason.of(failure) + ".");
    }

    private CsvReader<CsvRecord> records(Reader text) {
        return CsvReader.builder()
                .fieldSeparator(look.separator())
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true)
                .ofCsvRecord(text);
    }

    private static boolean onALine(CsvRecord record) {
        return record.getFields().stream().noneMatch(cell -> cell.contains("\n"));
    }

    /** A quote that never closes swallows the rest of the file into one cell. */
    private void requireClosedQuotes(int lastLine, boolean onALine) throws BadFileException {
        if (look.oddQuotes() && !onALine) {
            throw new BadFileException(
                    name, "line " + lastLine, "a quotation mark opens in this row and does not close.");
        }
    }
}
