package org.pullproof.report;

import java.util.List;
import java.util.Optional;
import org.pullproof.drawing.Drawing;
import org.pullproof.units.Inert;

/**
 * A printed blank for one test: one page, a big box for each reading, in the order of the test.
 *
 * @param key of the test on the command line
 * @param name of the test in words
 * @param title car and engine
 * @param order how the rows follow one another, one sentence
 * @param cautions of the act, in full
 * @param fields what is told once of the whole run
 * @param columns heads of the boxes
 * @param rows one a cylinder, first things first
 * @param picture drawn above the rows
 * @param notes what helps to fill it in, one sentence each
 */
public record TallySheet(
        String key,
        String name,
        String title,
        String order,
        List<String> cautions,
        List<Field> fields,
        List<Column> columns,
        List<Row> rows,
        Optional<Drawing> picture,
        List<String> notes) {
    public TallySheet {
        title = Inert.words(title);
        cautions = List.copyOf(cautions);
        fields = List.copyOf(fields);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /**
     * What is told once.
     *
     * @param name what it is
     * @param choices to tick one of; empty for a line to write on
     * @param told what is known already and printed; may be empty
     */
    public record Field(String name, List<String> choices, String told) {
        public Field {
            choices = List.copyOf(choices);
            told = Inert.words(told);
        }

        /** To be written on. */
        static Field blank(String name) {
            return new Field(name, List.of(), "");
        }
    }

    /** What kind of sheet it is, above its name. */
    public String what() {
        return key.equals(DayCardMaker.KEY) ? "Plan for the operator" : "Tally sheet";
    }

    /**
     * A column of boxes.
     *
     * @param head what is written there
     * @param share of the width, against the others
     */
    public record Column(String head, int share) {}

    /**
     * A row.
     *
     * @param cells one a column: printed words, boxes to tick, or empty for a figure
     */
    public record Row(List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A box.
     *
     * @param words printed in it, may be empty
     * @param big whether the words are the cylinder's number
     * @param ticks words to tick
     */
    public record Cell(String words, boolean big, List<String> ticks) {
        static final Cell BLANK = new Cell("", false, List.of());

        public Cell {
            ticks = List.copyOf(ticks);
        }

        static Cell number(int cylinder) {
            return new Cell(String.valueOf(cylinder), true, List.of());
        }

        static Cell printed(String words) {
            return new Cell(words, false, List.of());
        }

        static Cell ticked(List<String> words) {
            return new Cell("", false, words);
        }
    }
}
