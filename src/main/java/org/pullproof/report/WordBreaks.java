package org.pullproof.report;

import com.openhtmltopdf.extend.FSTextBreaker;

/**
 * Where a line may end: after spaces and after a hyphen inside a word. The breaks of the JDK would part a negative figure at its
 * decimal point, as they take the true minus for a word of its own.
 */
final class WordBreaks implements FSTextBreaker {
    private static final int DONE = -1;

    private String text = "";
    private int place;

    @Override
    public void setText(String words) {
        text = words;
        place = 0;
    }

    @Override
    public int next() {
        if (place >= text.length()) {
            return DONE;
        }
        do {
            place++;
        } while (place < text.length() && !mayBreakAt(place));
        return place;
    }

    private boolean mayBreakAt(int next) {
        char before = text.charAt(next - 1);
        boolean space = Character.isWhitespace(before) && !Character.isWhitespace(text.charAt(next));
        return space || (before == '-' && next > 1 && Character.isLetterOrDigit(text.charAt(next - 2)));
    }
}
