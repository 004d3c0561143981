package org.pullproof.files;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds the character between the cells of a table. */
final class Separator {
    /** So many lines tell it. */
    static final int SNIFFED_LINES = 400;

    private Separator() {}

    /**
     * The character that stands equally often in most lines; of two alike, tab before semicolon before comma, for a comma may be
     * the decimal mark.
     */
    static char of(List<String> lines) {
        char best = ',';
        long most = 0;
        for (char candidate : new char[] {'\t', ';', ','}) {
            long agreeing = agreeing(lines, candidate);
            if (agreeing > most) {
                best = candidate;
                most = agreeing;
            }
        }
        return best;
    }

    /** How many lines have the commonest number of that character outside quotes, lines without it left aside. */
    private static long agreeing(List<String> lines, char candidate) {
        Map<Integer, Integer> linesByCount = new HashMap<>();
        for (String line : lines) {
            int count = outsideQuotes(line, candidate);
            if (count > 0) {
                linesByCount.merge(count, 1, Integer::sum);
            }
        }
        return linesByCount.values().stream().max(Integer::compare).orElse(0);
    }

    /** A quotation mark without a partner in its line quotes nothing: an inch. */
    private static int outsideQuotes(String line, char candidate) {
        int count = 0;
        int at = 0;
        while (at < line.length()) {
            int close = line.charAt(at) == '"' ? line.indexOf('"', at + 1) : -1;
            count += line.charAt(at) == candidate ? 1 : 0;
            at = close < 0 ? at + 1 : close + 1;
        }
        return count;
    }
}
