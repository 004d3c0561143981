package org.pullproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.pullproof.report.ReportModel.Answer;
import org.pullproof.report.ReportModel.Item;
import org.pullproof.report.ReportModel.Section;

/** Writes a report as plain text, no line longer than 80 characters. */
public final class TextReport {
    private static final int WIDTH = 80;
    private static final int INDENT = 4;

    /** The report, lines ended by {@code \n}. */
    public String write(ReportModel report) {
        List<String> lines = new ArrayList<>();
        lines.addAll(Lines.wrapped(report.name() + ": " + report.title(), WIDTH));
        lines.add("=".repeat(WIDTH));
        lines.addAll(Lines.wrapped(oneLine(report.head()), WIDTH));
        report.answers().forEach(answer -> lines.addAll(answer(answer)));
        report.sections().forEach(section -> lines.addAll(section(section)));
        lines.add("");
        lines.add("-".repeat(WIDTH));
        lines.addAll(Lines.wrapped(String.join(" ", report.foot()), WIDTH));
        return lines.stream().map(String::stripTrailing).collect(Collectors.joining("\n", "", "\n"));
    }

    private static String oneLine(List<Item> items) {
        return items.stream().map(item -> item.name() + ": " + item.words()).collect(Collectors.joining(" · "));
    }

    private static List<String> answer(Answer answer) {
        List<String> lines = new ArrayList<>(List.of("", answer.question()));
        lines.addAll(Lines.indented(answer.answer().plain(), "    ", WIDTH));
        return lines;
    }

    private static List<String> section(Section section) {
        List<String> lines = new ArrayList<>(
                List.of("", "", section.title(), "-".repeat(section.title().length())));
        lines.addAll(Lines.wrapped(section.caption(), WIDTH));
        section.blocks().forEach(block -> lines.addAll(block(block)));
        return lines;
    }

    private static List<String> block(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return spaced(Lines.wrapped(paragraph.sentence().plain(), WIDTH));
        } else if (block instanceof Block.Points points) {
            return spaced(points(points));
        } else if (block instanceof Block.Photos photos) {
            return spaced(points(new Block.Points(
                    photos.key(),
                    photos.title(),
                    photos.photos().stream().map(Block.Photo::words).toList(),
                    false)));
        } else if (block instanceof Block.Items items) {
            return spaced(items(items.items()));
        } else if (block instanceof Block.Table table) {
            return spaced(new TextTable(table, WIDTH).lines());
        }
        return List.of();
    }

    private static List<String> spaced(List<String> lines) {
        List<String> spaced = new ArrayList<>(List.of(""));
        spaced.addAll(lines);
        return spaced;
    }

    private static List<String> points(Block.Points points) {
        List<String> lines = new ArrayList<>(List.of(points.title()));
        String mark = points.cautions() ? "  ! " : "  - ";
        for (String point : points.points()) {
            List<String> own = Lines.wrapped(point, WIDTH - INDENT);
            for (int i = 0; i < own.size(); i++) {
                lines.add((i == 0 ? mark : " ".repeat(INDENT)) + own.get(i));
            }
        }
        return lines;
    }

    private static List<String> items(List<Item> items) {
        int names = items.stream().mapToInt(item -> item.name().length()).max().orElse(0) + 2;
        List<String> lines = new ArrayList<>();
        for (Item item : items) {
            List<String> own = Lines.wrapped(item.words(), WIDTH - names);
            for (int i = 0; i < own.size(); i++) {
                lines.add(Lines.padded(i == 0 ? item.name() : "", names) + own.get(i));
            }
        }
        return lines;
    }
}
