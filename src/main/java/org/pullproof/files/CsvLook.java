package org.pullproof.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * How a table of text is written, found by going through its characters once, before any is taken for a cell.
 *
 * @param charset of its characters
 * @param mark bytes before the first character: a byte order mark
 * @param separator between cells
 * @param oddQuotes whether one of its quotation marks has no partner
 */
record CsvLook(Charset charset, int mark, char separator, boolean oddQuotes) {
    /** More than any row of a table; a guard against what is no table. */
    private static final int LONGEST_LINE = 1_000_000;

    private static final int BUFFER = 1 << 13;
    private static final Charset WESTERN = Charset.forName("windows-1252");

    /**
     * @throws BadFileException if it is empty, no text, or has a line without end
     * @throws IOException if it cannot be read
     */
    static CsvLook of(String name, FileBytes bytes) throws IOException {
        byte[] first = first(bytes);
        if (starts(first, 0xEF, 0xBB, 0xBF)) {
            return seen(name, bytes, StandardCharsets.UTF_8, 3);
        }
        if (starts(first, 0xFF, 0xFE)) {
            return seen(name, bytes, StandardCharsets.UTF_16LE, 2);
        }
        if (starts(first, 0xFE, 0xFF)) {
            return seen(name, bytes, StandardCharsets.UTF_16BE, 2);
        }
        return utf8OrWestern(name, bytes);
    }

    private static byte[] first(FileBytes bytes) throws IOException {
        try (InputStream in = bytes.open()) {
            return in.readNBytes(3);
        }
    }

    private static boolean starts(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static CsvLook utf8OrWestern(String name, FileBytes bytes) throws IOException {
        try (Reader strict = reader(
                bytes,
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT),
                0)) {
            return of(name, new Seen(name, false).all(strict), StandardCharsets.UTF_8, 0);
        } catch (CharacterCodingException notUtf8) {
            try (Reader western = reader(bytes, lenient(WESTERN), 0)) {
                return of(name, new Seen(name, false).all(western), WESTERN, 0);
            }
        }
    }

    private static CsvLook seen(String name, FileBytes bytes, Charset charset, int mark) throws IOException {
        try (Reader text = reader(bytes, lenient(charset), mark)) {
            return of(name, new Seen(name, true).all(text), charset, mark);
        }
    }

    private static CsvLook of(String name, Seen seen, Charset charset, int mark) throws BadFileException {
        if (seen.blank) {
            throw new BadFileException(name, "", "the file is empty; a table with a header row is expected.");
        }
        return new CsvLook(charset, mark, Separator.of(seen.lines()), seen.quotes % 2 == 1);
    }

    private static CharsetDecoder lenient(Charset charset) {
        return charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE);
    }

    private static Reader reader(FileBytes bytes, CharsetDecoder decoder, int mark) throws IOException {
        InputStream in = bytes.open();
        in.skipNBytes(mark);
        return new InputStreamReader(in, decoder);
    }

    /** The characters, for the caller to close. */
    Reader text(FileBytes bytes) throws IOException {
        return reader(bytes, lenient(charset), mark);
    }

    /** What was seen on the way through the characters. */
    private static final class Seen {
        private final String name;
        private final boolean mayHaveZeros;
        private final StringBuilder head = new StringBuilder();
        private int headLines;
        private boolean blank = true;
        private long quotes;
        private int line = 1;
        private long inLine;

        Seen(String name, boolean mayHaveZeros) {
            this.name = name;
            this.mayHaveZeros = mayHaveZeros;
        }

        Seen all(Reader text) throws IOException {
            char[] buffer = new char[BUFFER];
            for (int read = text.read(buffer); read >= 0; read = text.read(buffer)) {
                if (headLines < Separator.SNIFFED_LINES) {
                    head.append(buffer, 0, read);
                }
                look(buffer, read);
            }
            return this;
        }

        private void look(char[] buffer, int read) throws BadFileException {
            for (int i = 0; i < read; i++) {
                char at = buffer[i];
                if (at > '"') {
                    blank = false;
                    inLine++;
                } else {
                    lookCloser(at);
                }
                if (inLine > LONGEST_LINE) {
                    throw new BadFileException(
                            name,
                            "line " + line,
                            "the line is longer than a million characters; save it as CSV, one row a line.");
                }
            }
        }

        private void lookCloser(char at) throws BadFileException {
            inLine++;
            if (at == '\n' || at == '\r') {
                inLine = 0;
                line += at == '\n' ? 1 : 0;
                headLines++;
            } else if (at == '"') {
                quotes++;
            } else if (at == 0 && !mayHaveZeros) {
                throw new BadFileException(
                        name, "", "the file is not a table of text; save it as CSV, one row a line.");
            }
            blank &= Character.isWhitespace(at);
        }

        List<String> lines() {
            return head.toString().lines().limit(Separator.SNIFFED_LINES).toList();
        }
    }
}
