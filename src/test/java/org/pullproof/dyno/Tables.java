package org.pullproof.dyno;

import java.util.List;
import java.util.stream.IntStream;

/** Tables for tests, written as lines with a semicolon between cells. */
final class Tables {
    private Tables() {}

    static List<TableRow> of(String... lines) {
        return IntStream.range(0, lines.length)
                .mapToObj(i -> new TableRow(i + 1, List.of(lines[i].split(";", -1))))
                .toList();
    }
}
