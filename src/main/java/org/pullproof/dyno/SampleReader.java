package org.pullproof.dyno;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.pullproof.dyno.Columns.Column;
import org.pullproof.units.Quoted;

/**
 * Reads the rows below the header into a recording; a row that lacks a figure that is needed is left out and named. Of the rows it
 * holds the figures of the columns that are used, eight bytes each, and nothing else.
 */
final class SampleReader {
    /** No channel of a dyno reaches it in SI units; a guard against a spoilt cell. */
    private static final double LARGEST = 1e12;

    private static final double SLOWEST_RPM = 100;
    private static final double FASTEST_RPM = 25000;

    private static final int FIRST_ROWS = 1024;

    private final DecimalMark mark;
    private final MarkEvidence evidence = new MarkEvidence(SLOWEST_RPM);
    private final RowProblems problems = new RowProblems();
    private final IntStream.Builder lines = IntStream.builder();
    private final List<Channel> needed;
    private final List<Channel> others;

    private SampleReader(Columns columns, DecimalMark mark) {
        this.mark = mark;
        this.needed = columns.needed().stream()
                .map(role -> new Channel(role, columns.column(role)))
                .toList();
        this.others = columns.columns().entrySet().stream()
                .filter(entry -> !columns.needed().contains(entry.getKey()))
                .map(entry -> new Channel(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** One column on its way into memory. */
    private static final class Channel {
        private final Role role;
        private final Column column;
        private double[] figures = new double[FIRST_ROWS];
        private int size;
        private double latest;

        Channel(Role role, Column column) {
            this.role = role;
            this.column = column;
        }

        /** In SI units; NaN where the cell holds no figure, or one too large to be measured. */
        void read(String cell, DecimalMark mark) {
            double figure = column.unit().toSi(mark.figure(cell));
            latest = Math.abs(figure) <= LARGEST ? figure : Double.NaN;
        }

        void keep() {
            if (size == figures.length) {
                figures = Arrays.copyOf(figures, size + size / 2);
            }
            figures[size++] = latest;
        }

        /** Its figures, which are then let go here. */
        double[] taken() {
            double[] all = Arrays.copyOf(figures, size);
            figures = all;
            return all;
        }
    }

    /** What was read: the rows, where each stands in the file, and what was left out. */
    static final class Read {
        private final int[] lines;
        private final Recording recording;
        private final RowProblems problems;

        private Read(int[] lines, Recording recording, RowProblems problems) {
            this.lines = lines;
            this.recording = recording;
            this.problems = problems;
        }

        int[] lines() {
            return lines.clone();
        }

        /** The rows; empty columns if none could be read. */
        Recording recording() {
            return recording;
        }

        /** Rows left out; whoever leaves out more adds it there. */
        RowProblems problems() {
            return problems;
        }

        Read with(Role role, double[] column) {
            return new Read(lines, recording.with(role, column), problems);
        }
    }

    /**
     * Goes through the rows with the decimal mark that the first of them have, and once more in the rare table whose later rows tell
     * another one.
     *
     * @param head the first rows, down to the header and further
     */
    static <X extends Exception> Read read(TableRows<X> rows, List<TableRow> head, Columns columns) throws X {
        SampleReader first = new SampleReader(columns, mark(head, columns));
        first.takeAll(rows, columns.firstRow());
        DecimalMark told = first.evidence.mark();
        if (told == first.mark) {
            return first.taken();
        }
        SampleReader again = new SampleReader(columns, told);
        again.takeAll(rows, columns.firstRow());
        return again.taken();
    }

    private static DecimalMark mark(List<TableRow> head, Columns columns) {
        SampleReader guess = new SampleReader(columns, DecimalMark.POINT);
        head.stream().skip(columns.firstRow()).forEach(guess::take);
        return guess.evidence.mark();
    }

    private <X extends Exception> void takeAll(TableRows<X> rows, int firstRow) throws X {
        int[] passed = {0};
        rows.each(row -> {
            if (passed[0]++ >= firstRow) {
                take(row);
            }
            return true;
        });
    }

    private void take(TableRow row) {
        boolean usable = true;
        for (Channel channel : needed) {
            String cell = row.cell(channel.column.index());
            evidence.see(cell);
            if (channel.role == Role.RPM) {
                evidence.seeSpeed(cell);
            }
            usable = usable && usable(row, channel, cell);
        }
        if (usable) {
            lines.add(row.line());
            needed.forEach(Channel::keep);
            for (Channel channel : others) {
                channel.read(row.cell(channel.column.index()), mark);
                channel.keep();
            }
        }
    }

    private boolean usable(TableRow row, Channel channel, String cell) {
        channel.read(cell, mark);
        double figure = channel.latest;
        String header = channel.role == Role.RPM ? "rpm" : channel.column.header();
        if (Double.isNaN(figure)) {
            if (!row.blank()) {
                problems.leftOut(
                        row.line(),
                        header,
                        cell.isEmpty() ? "the cell is empty" : "\"" + Quoted.of(cell) + "\" is not a figure");
            }
            return false;
        }
        if (channel.role == Role.RPM && (figure < SLOWEST_RPM || figure > FASTEST_RPM)) {
            problems.leftOut(row.line(), header, cell + " is no speed of an engine under load in rpm");
            return false;
        }
        return true;
    }

    private Read taken() {
        Map<Role, double[]> read = new EnumMap<>(Role.class);
        needed.forEach(channel -> read.put(channel.role, channel.taken()));
        others.forEach(channel -> read.put(channel.role, channel.taken()));
        return new Read(lines.build().toArray(), Recording.owning(read), problems);
    }
}
