package org.pullproof.ui.help;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words of the guide set in one way.
 *
 * @param words the words
 * @param style how they are set
 */
record GuideRun(String words, Style style) {
    /** How words are set. */
    enum Style {
        PLAIN,
        BOLD,
        ITALIC,
        CODE
    }

    /** What Markdown (CommonMark 0.31, 6.1 code spans, 6.2 emphasis, 6.3 links) the guide uses inside a line. */
    private static final Pattern MARKED = Pattern.compile(
            "`(?<code>[^`]+)`|\\*\\*(?<bold>.+?)\\*\\*|\\*(?<italic>[^*]+)\\*|\\[(?<link>[^]]+)]\\([^)]*\\)");

    /** The runs of a line; a link stays as its words. */
    static List<GuideRun> of(String line) {
        List<GuideRun> runs = new ArrayList<>();
        Matcher marked = MARKED.matcher(line);
        int from = 0;
        while (marked.find()) {
            add(runs, line.substring(from, marked.start()), Style.PLAIN);
            runs.add(marked(marked));
            from = marked.end();
        }
        add(runs, line.substring(from), Style.PLAIN);
        return List.copyOf(runs);
    }

    private static GuideRun marked(Matcher marked) {
        if (marked.group("code") != null) {
            return new GuideRun(marked.group("code"), Style.CODE);
        }
        if (marked.group("bold") != null) {
            return new GuideRun(marked.group("bold"), Style.BOLD);
        }
        return marked.group("italic") != null
                ? new GuideRun(marked.group("italic"), Style.ITALIC)
                : new GuideRun(marked.group("link"), Style.PLAIN);
    }

    private static void add(List<GuideRun> runs, String words, Style style) {
        if (!words.isEmpty()) {
            runs.add(new GuideRun(words, style));
        }
    }
}
