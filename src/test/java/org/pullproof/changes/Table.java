package org.pullproof.changes;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** A reference table of the tests: lines that begin with # tell its source, the first other line is the header. */
final class Table {
    private final List<String> header;
    private final List<List<String>> rows;

    private Table(List<List<String>> lines) {
        this.header = lines.get(0);
        this.rows = lines.subList(1, lines.size());
    }

    static Table read(String name) {
        try (InputStream in = Objects.requireNonNull(Table.class.getResourceAsStream(name), name)) {
            return new Table(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> List.of(line.split(",", -1)))
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    int size() {
        return rows.size();
    }

    String text(int row, String column) {
        return rows.get(row).get(header.indexOf(column));
    }

    double number(int row, String column) {
        return Double.parseDouble(text(row, column));
    }

    /** The value of a column in the row where other columns read so. */
    double number(String wanted, String column, String is, String otherColumn, String otherIs) {
        for (int row = 0; row < size(); row++) {
            if (text(row, column).equals(is) && text(row, otherColumn).equals(otherIs)) {
                return number(row, wanted);
            }
        }
        throw new IllegalArgumentException("no row " + is + ", " + otherIs);
    }
}
