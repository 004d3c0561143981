package org.pullproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.pullproof.report.TallySheet.Cell;
import org.pullproof.report.TallySheet.Column;
import org.pullproof.report.TallySheet.Field;
import org.pullproof.report.TallySheet.Row;

/** Writes a tally sheet as plain text, no line longer than 80 characters. */
public final class TallyText {
    private static final int WIDTH = 80;
    private static final int FIELD = 39;
    private static final String TICK = "[ ] ";

    /** The sheet, lines ended by {@code \n}. */
    public String write(TallySheet sheet) {
        List<String> lines = new ArrayList<>();
        lines.addAll(Lines.wrapped("Tally sheet: " + sheet.name() + " · " + sheet.title(), WIDTH));
        lines.add("=".repeat(WIDTH));
        lines.add("Before you begin");
        sheet.cautions().forEach(caution -> lines.addAll(marked("  ! ", caution)));
        lines.add("");
        sheet.fields().forEach(field -> lines.add(field(field)));
        lines.add("");
        lines.addAll(Lines.wrapped(sheet.order(), WIDTH));
        lines.addAll(table(sheet));
        sheet.notes().forEach(note -> lines.addAll(marked("  - ", note)));
        return lines.stream().map(String::stripTrailing).collect(Collectors.joining("\n", "", "\n"));
    }

    private static List<String> marked(String mark, String sentence) {
        List<String> lines = new ArrayList<>();
        for (String line : Lines.wrapped(sentence, WIDTH - mark.length())) {
            lines.add((lines.isEmpty() ? mark : " ".repeat(mark.length())) + line);
        }
        return lines;
    }

    private static String field(Field field) {
        if (!field.told().isEmpty()) {
            return Lines.padded(field.name(), WIDTH - FIELD - 16) + field.told();
        }
        String answer = field.choices().isEmpty()
                ? "_".repeat(FIELD)
                : field.choices().stream().map(words -> TICK + words).collect(Collectors.joining("  "));
        return Lines.padded(field.name(), WIDTH - FIELD - 16) + answer;
    }

    private static List<String> table(TallySheet sheet) {
        int[] widths = widths(sheet.columns());
        String rule = rule(widths);
        List<String> lines = new ArrayList<>(List.of(rule));
        lines.addAll(cells(
                sheet.columns().stream().map(Column::head).map(Cell::printed).toList(), widths));
        lines.add(rule);
        for (Row row : sheet.rows()) {
            lines.addAll(cells(row.cells(), widths));
            lines.add(rule);
        }
        return lines;
    }

    /** Widths inside the bars, which take one character each. */
    private static int[] widths(List<Column> columns) {
        int room = WIDTH - columns.size() - 1;
        int whole = columns.stream().mapToInt(Column::share).sum();
        return columns.stream()
                .mapToInt(column -> room * column.share() / whole)
                .toArray();
    }

    private static String rule(int... widths) {
        StringBuilder rule = new StringBuilder("+");
        for (int width : widths) {
            rule.append("-".repeat(width)).append('+');
        }
        return rule.toString();
    }

    private static List<String> cells(List<Cell> cells, int... widths) {
        List<List<String>> words = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            words.add(words(cells.get(i), widths[i] - 2));
        }
        int height = Math.max(2, words.stream().mapToInt(List::size).max().orElse(1));
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < height; line++) {
            lines.add(line(words, line, widths));
        }
        return lines;
    }

    private static List<String> words(Cell cell, int width) {
        if (cell.ticks().isEmpty()) {
            return Lines.wrapped(cell.words(), width);
        }
        return Lines.wrapped(cell.ticks().stream().map(words -> "[_]" + words).collect(Collectors.joining(" ")), width);
    }

    private static String line(List<List<String>> words, int line, int... widths) {
        StringBuilder text = new StringBuilder("|");
        for (int i = 0; i < widths.length; i++) {
            String part = line < words.get(i).size() ? words.get(i).get(line) : "";
            text.append(Lines.padded(" " + part, widths[i])).append('|');
        }
        return text.toString();
    }
}
