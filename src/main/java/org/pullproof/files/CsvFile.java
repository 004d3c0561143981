package org.pullproof.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Bytes to a table, however a spreadsheet, logger or dyno wrote it: comma, semicolon or tab; UTF-8, UTF-16 with a byte order
 * mark, or else Windows-1252; quotes; any line end.
 */
public final class CsvFile {
    private static final int SNIFFED_LINES = 400;

    /** More than any row of a table; a guard against what is no table. */
    private static final int LONGEST_LINE = 1_000_000;

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
     * Reads the rows that are not empty.
     *
     * @param name of the file, for messages
     * @throws BadFileException if it is empty, no text, or a quote does not close
     */
    public List<Row> rows(String name, byte[] bytes) throws BadFileException {
        requireLines(name, bytes);
        String text = text(name, bytes);
        if (text.isBlank()) {
            throw new BadFileException(name, "", "the file is empty; a table with a header row is expected.");
        }
        List<Row> rows = parse(name, text, separator(text));
        requireClosedQuotes(name, text, rows);
        return rows;
    }

    private static void requireLines(String name, byte[] bytes) throws BadFileException {
        int begin = 0;
        int line = 1;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n' || bytes[i] == '\r') {
                begin = i + 1;
                line += bytes[i] == '\n' ? 1 : 0;
            } else if (i - begin >= LONGEST_LINE) {
                throw new BadFileException(
                        name,
                        "line " + line,
                        "the line is longer than a million characters; save it as CSV, one row a line.");
            }
        }
    }

    private static List<Row> parse(String name, String text, char separator) throws BadFileException {
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true)
                .ofCsvRecord(text)) {
            return reader.stream()
                    .map(row -> new Row((int) row.getStartingLineNumber(), row.getFields()))
                    .toList();
        } catch (CsvParseException | IOException unreadable) {
            throw new BadFileException(name, "", "the file is not a table of text; save it as CSV, one row a line.");
        }
    }

    /** A quote that never closes would swallow the rest of the file into one cell. */
    private static void requireClosedQuotes(String name, String text, List<Row> rows) throws BadFileException {
        boolean odd = text.chars().filter(c -> c == '"').count() % 2 == 1;
        Row last = rows.get(rows.size() - 1);
        if (odd && last.cells().stream().anyMatch(cell -> cell.contains("\n"))) {
            throw new BadFileException(
                    name, "line " + last.line(), "a quotation mark opens in this row and does not close.");
        }
    }

    private static String text(String name, byte[] bytes) throws BadFileException {
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
            return decoded(bytes, 3, StandardCharsets.UTF_8);
        }
        if (starts(bytes, 0xFF, 0xFE)) {
            return decoded(bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (starts(bytes, 0xFE, 0xFF)) {
            return decoded(bytes, 2, StandardCharsets.UTF_16BE);
        }
        for (byte each : bytes) {
            if (each == 0) {
                throw new BadFileException(
                        name, "", "the file is not a table of text; save it as CSV, one row a line.");
            }
        }
        return utf8OrWestern(bytes);
    }

    private static boolean starts(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static String decoded(byte[] bytes, int from, Charset charset) {
        return new String(bytes, from, bytes.length - from, charset);
    }

    private static String utf8OrWestern(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }

    /**
     * The character that stands equally often in most lines; of two alike, tab before semicolon before comma, for a comma may be
     * the decimal mark.
     */
    private static char separator(String text) {
        List<String> lines = text.lines().limit(SNIFFED_LINES).toList();
        char best = ',';
        long most = 0;
        for (char candidate : new char[] {'\t', ';', ','}) {
            long agreeing = agreeing(lines, candidate);
            if (agreeing > most) {
                best = candidate;
                most = agreeing;
            }
        }
        return best;
    }

    /** How many lines have the commonest number of that character outside quotes, lines without it left aside. */
    private static long agreeing(List<String> lines, char candidate) {
        Map<Long, Long> linesByCount = lines.stream()
                .map(line -> line.replaceAll("\"[^\"]*\"", ""))
                .map(line -> line.chars().filter(c -> c == candidate).count())
                .filter(count -> count > 0)
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return Stream.concat(Stream.of(0L), linesByCount.values().stream())
                .max(Long::compare)
                .orElseThrow();
    }
}
