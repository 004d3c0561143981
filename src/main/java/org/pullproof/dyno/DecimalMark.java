package org.pullproof.dyno;

import java.util.regex.Pattern;

/** Which character parts the whole from the fraction in a table; the other one may part thousands. */
enum DecimalMark {
    POINT('.', ','),
    COMMA(',', '.');

    private static final Pattern FIGURE = Pattern.compile("[+\\-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+\\-]?\\d{1,3})?");
    private static final Pattern SPACES = Pattern.compile("[\u00a0\u202f ']");

    /** Whole numbers of so many digits, and powers of ten up to that of 22, are exact as a double (IEEE 754). */
    private static final int EXACT_DIGITS = 15;

    private static final double[] POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private final char mark;
    private final char other;
    private final Pattern grouped;

    DecimalMark(char mark, char other) {
        this.mark = mark;
        this.other = other;
        this.grouped = Pattern.compile("[+\\-]?\\d{1,3}(\\" + other + "\\d{3})+(\\" + mark + "\\d*)?");
    }

    /** The other of the two. */
    DecimalMark opposite() {
        return this == POINT ? COMMA : POINT;
    }

    /** The figure in the cell; NaN if it is none, as blank cells are in a {@link Recording}. */
    double figure(String cell) {
        double plain = plain(cell);
        return Double.isNaN(plain) ? anyFigure(cell) : plain;
    }

    private double anyFigure(String cell) {
        String plain = SPACES.matcher(cell.replace('\u2212', '-')).replaceAll("");
        if (grouped.matcher(plain).matches()) {
            plain = plain.replace(String.valueOf(other), "");
        }
        String figure = plain.replace(mark, '.');
        boolean known = plain.indexOf(other) < 0 && FIGURE.matcher(figure).matches();
        double value = known ? Double.parseDouble(figure) : Double.NaN;
        return Double.isFinite(value) ? value : Double.NaN;
    }

    /**
     * Nearly every cell of a large file: digits with one mark among them at most, few enough for both numbers of the quotient to be
     * exact, so that it is the double nearest to the cell. No pattern is tried on it. NaN for any other cell.
     */
    private double plain(String cell) {
        int length = cell.length();
        boolean minus = length > 0 && cell.charAt(0) == '-';
        long digits = 0;
        int count = 0;
        int marked = -1;
        for (int i = minus ? 1 : 0; i < length; i++) {
            char at = cell.charAt(i);
            if (at >= '0' && at <= '9') {
                digits = 10 * digits + (at - '0');
                count++;
            } else if (at == mark && marked < 0) {
                marked = i;
            } else {
                return Double.NaN;
            }
            if (count > EXACT_DIGITS) {
                return Double.NaN;
            }
        }
        if (count == 0) {
            return Double.NaN;
        }
        double figure = digits / POWERS[marked < 0 ? 0 : length - 1 - marked];
        return minus ? -figure : figure;
    }
}
