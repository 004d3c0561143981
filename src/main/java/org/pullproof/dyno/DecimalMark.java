package org.pullproof.dyno;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Which character parts the whole from the fraction in a table; the other one may part thousands. */
enum DecimalMark {
    POINT('.', ','),
    COMMA(',', '.');

    private static final Pattern FIGURE = Pattern.compile("[+\\-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+\\-]?\\d{1,3})?");

    private static final int MOST_PLAIN = 40;
    private static final Pattern SPACES = Pattern.compile("[\u00a0\u202f ']");

    private final char mark;
    private final char other;
    private final Pattern grouped;

    DecimalMark(char mark, char other) {
        this.mark = mark;
        this.other = other;
        this.grouped = Pattern.compile("[+\\-]?\\d{1,3}(\\" + other + "\\d{3})+(\\" + mark + "\\d*)?");
    }

    /**
     * Decides by the cells of a table. A comma is the decimal mark unless the point is seen as one; where both occur, the one
     * that cannot part thousands (it stands last, or without three digits behind it) is the decimal mark.
     */
    static DecimalMark of(List<String> cells) {
        boolean commas = cells.stream().anyMatch(cell -> cell.indexOf(',') >= 0);
        boolean points = cells.stream().anyMatch(cell -> cell.indexOf('.') >= 0);
        if (!commas) {
            return POINT;
        }
        if (!points) {
            return COMMA;
        }
        return cells.stream().anyMatch(cell -> cell.matches(".*,\\d*") && !cell.matches(".*,\\d{3}")) ? COMMA : POINT;
    }

    /** The other of the two. */
    DecimalMark opposite() {
        return this == POINT ? COMMA : POINT;
    }

    /** The figure in the cell; empty if it is none. */
    OptionalDouble read(String cell) {
        if (isPlain(cell)) {
            return OptionalDouble.of(Double.parseDouble(cell.replace(mark, '.')));
        }
        String plain = SPACES.matcher(cell.replace('\u2212', '-')).replaceAll("");
        if (grouped.matcher(plain).matches()) {
            plain = plain.replace(String.valueOf(other), "");
        }
        String figure = plain.replace(mark, '.');
        boolean known = plain.indexOf(other) < 0 && FIGURE.matcher(figure).matches();
        double value = known ? Double.parseDouble(figure) : Double.NaN;
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** Nearly every cell of a large file: digits with one mark among them at most, few enough to be finite. No pattern is tried on it. */
    private boolean isPlain(String cell) {
        int marks = 0;
        for (int i = 0; i < cell.length(); i++) {
            char at = cell.charAt(i);
            if (at == mark) {
                marks++;
            } else if (at < '0' || at > '9') {
                return false;
            }
        }
        return marks <= 1 && cell.length() > marks && cell.length() <= MOST_PLAIN;
    }
}
