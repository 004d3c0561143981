package org.pullproof.ui.parts;

import java.text.BreakIterator;
import java.util.Locale;

/** The beginning of a longer text, where the whole of it stands in another place. */
public final class Sentences {
    private Sentences() {}

    /** The first sentences of a text, at most so many. */
    public static String first(String text, int most) {
        BreakIterator sentences = BreakIterator.getSentenceInstance(Locale.ENGLISH);
        sentences.setText(text);
        int end = 0;
        for (int i = 0; i < most; i++) {
            int next = sentences.next();
            end = next == BreakIterator.DONE ? text.length() : next;
        }
        return text.substring(0, end).strip();
    }
}
