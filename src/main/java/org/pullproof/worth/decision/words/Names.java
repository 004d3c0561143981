package org.pullproof.worth.decision.words;

import java.util.List;
import java.util.Locale;

/** Names and lists in a sentence. */
final class Names {
    private static final String MARK = "**";

    private Names() {}

    static String bold(String name) {
        return MARK + name + MARK;
    }

    /** With a capital, behind the mark of bold words if there is one. */
    static String capital(String words) {
        int first = words.startsWith(MARK) ? MARK.length() : 0;
        return words.substring(0, first)
                + words.substring(first, first + 1).toUpperCase(Locale.ROOT)
                + words.substring(first + 1);
    }

    /** One, two and three. */
    static String joined(List<String> words) {
        return joined(words, "and");
    }

    static String joined(List<String> words, String last) {
        int count = words.size();
        if (count < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, count - 1)) + " " + last + " " + words.get(count - 1);
    }
}
