package org.pullproof.ui.help;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Reads the part of Markdown (CommonMark 0.31; tables as GitHub Flavored Markdown 0.29, 4.10) in which the guide is written: headings,
 * paragraphs, points, numbered or not, tables and fenced code. A heading of the second level begins a chapter; what stands before the first is a
 * chapter under the title of the guide.
 */
final class GuideReader {
    private static final String FENCE = "```";
    private static final String NUMBERED = "\\d+\\. .*";

    private final List<GuideChapter> chapters = new ArrayList<>();
    private final List<GuideBlock> blocks = new ArrayList<>();
    private final List<String> waiting = new ArrayList<>();
    private String title = "";
    private boolean inCode;

    private GuideReader() {}

    /** The chapters of a guide in order. */
    static List<GuideChapter> read(String markdown) {
        GuideReader reader = new GuideReader();
        markdown.lines().forEach(reader::line);
        reader.endChapter();
        return List.copyOf(reader.chapters);
    }

    private void line(String line) {
        if (line.startsWith(FENCE)) {
            fence();
        } else if (inCode) {
            waiting.add(line);
        } else if (line.startsWith("# ") || line.startsWith("## ")) {
            endChapter();
            title = line.substring(line.indexOf(' ') + 1);
        } else if (line.startsWith("### ")) {
            endBlock();
            blocks.add(new GuideBlock.Heading(line.substring(4)));
        } else {
            words(line);
        }
    }

    private void fence() {
        if (inCode) {
            blocks.add(new GuideBlock.Code(String.join("\n", waiting)));
            waiting.clear();
        } else {
            endBlock();
        }
        inCode = !inCode;
    }

    private void words(String line) {
        if (line.isBlank() || line.startsWith("- ") || line.matches(NUMBERED)) {
            endBlock();
        }
        if (!line.isBlank()) {
            waiting.add(line.strip());
        }
    }

    private void endBlock() {
        if (!waiting.isEmpty()) {
            blocks.add(block());
            waiting.clear();
        }
    }

    private GuideBlock block() {
        String first = waiting.get(0);
        if (first.startsWith("|")) {
            return new GuideBlock.Table(waiting.stream()
                    .filter(line -> !line.matches("[|:\\s-]+"))
                    .map(GuideReader::row)
                    .toList());
        }
        String words = String.join(" ", waiting);
        return first.startsWith("- ")
                ? new GuideBlock.Point(GuideRun.of(words.substring(2)))
                : new GuideBlock.Paragraph(GuideRun.of(words));
    }

    private static List<List<GuideRun>> row(String line) {
        return Arrays.stream(line.split("(?<!\\\\)\\|", -1))
                .skip(1)
                .map(cell -> GuideRun.of(cell.strip().replace("\\|", "|")))
                .collect(Collectors.collectingAndThen(
                        Collectors.toList(), cells -> List.copyOf(cells.subList(0, cells.size() - 1))));
    }

    private void endChapter() {
        endBlock();
        if (!title.isEmpty()) {
            chapters.add(new GuideChapter(title, blocks));
        }
        blocks.clear();
    }
}
