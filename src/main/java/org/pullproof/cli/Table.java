package org.pullproof.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.pullproof.units.Inert;

/** A table for people in plain text: two spaces between columns, figures to the right. */
public final class Table {
    private static final String GAP = "  ";

    private final List<String> heads = new ArrayList<>();
    private final List<Boolean> right = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    /** Adds a column of words. */
    public Table words(String head) {
        return column(head, false);
    }

    /** Adds a column of figures. */
    public Table figures(String head) {
        return column(head, true);
    }

    private Table column(String head, boolean toTheRight) {
        heads.add(head);
        right.add(toTheRight);
        return this;
    }

    /**
     * @param cells one a column, in order
     */
    public Table row(String... cells) {
        if (cells.length != heads.size()) {
            throw new IllegalArgumentException("A row has " + heads.size() + " cells, was " + Arrays.toString(cells));
        }
        rows.add(Arrays.stream(cells).map(Inert::words).toList());
        return this;
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** The lines, head first, without spaces at their ends. */
    public List<String> lines() {
        int[] widths = new int[heads.size()];
        widen(widths, heads);
        rows.forEach(row -> widen(widths, row));
        List<String> lines = new ArrayList<>();
        lines.add(line(heads, widths));
        rows.forEach(row -> lines.add(line(row, widths)));
        return lines;
    }

    private static void widen(int[] widths, List<String> cells) {
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(widths[i], width(cells.get(i)));
        }
    }

    private String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String space = " ".repeat(widths[i] - width(cells.get(i)));
            line.append(i == 0 ? "" : GAP);
            line.append(right.get(i) ? space + cells.get(i) : cells.get(i) + space);
        }
        return line.toString().stripTrailing();
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
