package org.pullproof.dyno;

import java.util.stream.IntStream;

/**
 * What the cells of a table tell of its decimal mark, met one after another.
 *
 * <p>A comma is the decimal mark unless the point is seen as one; where both occur, the one that cannot part thousands (it stands
 * last, or without three digits behind it) is the decimal mark. Where every engine speed would then be a few turns a minute, the mark
 * parts thousands.
 */
final class MarkEvidence {
    private final double slowestRpm;
    private boolean commas;
    private boolean points;
    private boolean commaIsNoThousand;
    private boolean speeds;
    private boolean turnsByPoint;
    private boolean turnsByComma;

    /**
     * @param slowestRpm slower than that no engine turns under load
     */
    MarkEvidence(double slowestRpm) {
        this.slowestRpm = slowestRpm;
    }

    /** Minds a cell of a column that is needed. */
    void see(String cell) {
        int comma = -1;
        boolean point = false;
        for (int i = 0; i < cell.length(); i++) {
            char at = cell.charAt(i);
            if (at >= '0' && at <= '9') {
                continue;
            }
            if (at == ',') {
                comma = i;
            } else if (at == '.') {
                point = true;
            } else if (!stands(at, i)) {
                return;
            }
        }
        points |= point;
        if (comma >= 0) {
            commas = true;
            commaIsNoThousand |= digitsOnly(cell, comma + 1) && cell.length() - comma - 1 != 3;
        }
    }

    /** Whether a figure may have that character there, whichever of the marks is the decimal one. */
    private static boolean stands(char at, int place) {
        return (at >= '0' && at <= '9') || ".,\u00a0 '".indexOf(at) >= 0 || (place == 0 && "+-\u2212".indexOf(at) >= 0);
    }

    /** Minds a cell of engine speed, after {@link #see}. */
    void seeSpeed(String cell) {
        boolean known = byTheCells() == DecimalMark.POINT ? turnsByPoint : turnsByComma;
        if (!known && looksLikeFigure(cell)) {
            speeds = true;
            turnsByPoint |= DecimalMark.POINT.figure(cell) >= slowestRpm;
            turnsByComma |= DecimalMark.COMMA.figure(cell) >= slowestRpm;
        }
    }

    private static boolean looksLikeFigure(String cell) {
        return !cell.isEmpty() && IntStream.range(0, cell.length()).allMatch(i -> stands(cell.charAt(i), i));
    }

    private static boolean digitsOnly(String cell, int from) {
        return cell.chars().skip(from).allMatch(at -> at >= '0' && at <= '9');
    }

    private DecimalMark byTheCells() {
        return commas && (!points || commaIsNoThousand) ? DecimalMark.COMMA : DecimalMark.POINT;
    }

    /** The mark by all cells seen. */
    DecimalMark mark() {
        DecimalMark mark = byTheCells();
        boolean turns = mark == DecimalMark.POINT ? turnsByPoint : turnsByComma;
        boolean turnsOtherwise = mark == DecimalMark.POINT ? turnsByComma : turnsByPoint;
        return speeds && !turns && turnsOtherwise ? mark.opposite() : mark;
    }
}
