package org.pullproof.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/** A table in columns of characters: the widest columns give way until the table fits, and their words are wrapped. */
final class TextTable {
    private static final String GAP = "  ";

    private final Block.Table table;
    private final int[] widths;

    TextTable(Block.Table table, int width) {
        this.table = table.withoutEmptyColumns();
        this.widths = fitting(widest(this.table), narrowest(this.table), width);
    }

    /** No line where no column has anything in it. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (table.columns().isEmpty()) {
            return lines;
        }
        if (!table.title().isEmpty()) {
            lines.addAll(Lines.wrapped(table.title(), total(widths)));
        }
        lines.addAll(row(table.columns().stream().map(Block.Column::head).toList()));
        lines.add("-".repeat(total(widths)));
        table.rows()
                .forEach(row -> lines.addAll(row(row.stream().map(Cell::words).toList())));
        return lines;
    }

    private static int[] widest(Block.Table table) {
        return widths(table, String::length, TextTable::longestWord);
    }

    /** Widths below which words are cut. */
    private static int[] narrowest(Block.Table table) {
        return widths(table, TextTable::longestWord, TextTable::longestWord);
    }

    private static int[] widths(Block.Table table, ToIntFunction<String> ofCell, ToIntFunction<String> ofHead) {
        return IntStream.range(0, table.columns().size())
                .map(i -> table.rows().stream()
                        .mapToInt(row -> ofCell.applyAsInt(row.get(i).words()))
                        .reduce(ofHead.applyAsInt(table.columns().get(i).head()), Math::max))
                .toArray();
    }

    private static int longestWord(String words) {
        return Arrays.stream(words.split(" ", -1))
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }

    /** Takes from the column with most to give, and cuts words only when no column has anything left. */
    private static int[] fitting(int[] natural, int[] floors, int width) {
        int[] widths = natural.clone();
        while (total(widths) > width) {
            OptionalInt giving = widest(widths, i -> widths[i] > floors[i]);
            OptionalInt cut = giving.isPresent() ? giving : widest(widths, i -> widths[i] > 1);
            if (cut.isEmpty()) {
                return widths;
            }
            widths[cut.getAsInt()]--;
        }
        return widths;
    }

    private static OptionalInt widest(int[] widths, IntPredicate counts) {
        return IntStream.range(0, widths.length).filter(counts).reduce((a, b) -> widths[b] > widths[a] ? b : a);
    }

    private static int total(int[] widths) {
        return Arrays.stream(widths).sum() + GAP.length() * Math.max(0, widths.length - 1);
    }

    private List<String> row(List<String> cells) {
        List<List<String>> wrapped = IntStream.range(0, cells.size())
                .mapToObj(i -> Lines.wrapped(cells.get(i), widths[i]))
                .toList();
        int height = wrapped.stream().mapToInt(List::size).max().orElse(0);
        return IntStream.range(0, height).mapToObj(line -> line(wrapped, line)).toList();
    }

    private String line(List<List<String>> wrapped, int line) {
        List<String> parts = IntStream.range(0, wrapped.size())
                .mapToObj(i ->
                        aligned(line < wrapped.get(i).size() ? wrapped.get(i).get(line) : "", i))
                .toList();
        return String.join(GAP, parts);
    }

    private String aligned(String words, int column) {
        return table.columns().get(column).right()
                ? Lines.rightPadded(words, widths[column])
                : Lines.padded(words, widths[column]);
    }
}
