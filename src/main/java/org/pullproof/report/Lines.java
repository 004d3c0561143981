package org.pullproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Text cut into lines. A no-break space holds a figure and its unit on one line, then becomes a plain space. */
final class Lines {
    static final char NO_BREAK_SPACE = '\u00a0';

    private static final Pattern SPACES = Pattern.compile(" +");

    private Lines() {}

    /** The words in lines of at most that many characters, at least one; a word longer than that is cut. No words, no line. */
    static List<String> wrapped(String text, int most) {
        int width = Math.max(1, most);
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : SPACES.split(text.strip(), -1)) {
            String rest = word;
            if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines.stream().map(one -> one.replace(NO_BREAK_SPACE, ' ')).toList();
    }

    static List<String> indented(String text, String indent, int width) {
        return wrapped(text, width - indent.length()).stream()
                .map(line -> indent + line)
                .toList();
    }

    static String padded(String words, int width) {
        return words + " ".repeat(Math.max(0, width - words.length()));
    }

    static String rightPadded(String words, int width) {
        return " ".repeat(Math.max(0, width - words.length())) + words;
    }
}
