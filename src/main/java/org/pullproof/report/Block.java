package org.pullproof.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.pullproof.drawing.Drawing;
import org.pullproof.units.Inert;
import org.pullproof.units.Sentence;

/** A part of a section. */
public sealed interface Block {
    /** A sentence of its own. */
    record Paragraph(Sentence sentence) implements Block {
        public Paragraph {
            sentence = new Sentence(Inert.words(sentence.marked()));
        }
    }

    /**
     * Sentences one below the other.
     *
     * @param key for programs
     * @param title what they have in common
     * @param points the sentences
     * @param cautions whether they warn of harm: they are marked, and never left out
     */
    record Points(String key, String title, List<String> points, boolean cautions) implements Block {
        public Points {
            points = points.stream().map(Inert::words).toList();
        }
    }

    /** Named values. */
    record Items(List<ReportModel.Item> items) implements Block {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** A drawing; what it shows stands in words or in a table too, so a text report may leave it out. */
    record Picture(Drawing drawing) implements Block {}

    /**
     * Photographs side by side.
     *
     * @param key for programs
     * @param title what they have in common
     * @param photos in order
     */
    record Photos(String key, String title, List<Photo> photos) implements Block {
        public Photos {
            photos = List.copyOf(photos);
        }
    }

    /**
     * A photograph.
     *
     * @param words what it shows, and which file it is
     * @param source its small picture as a data address; empty where the file is lost, and the words say so
     */
    record Photo(String words, String source) {
        public Photo {
            words = Inert.words(words);
        }
    }

    /**
     * Rows of cells.
     *
     * @param key for programs
     * @param title what the rows are, may be empty
     * @param columns at least one
     * @param rows each as wide as the columns
     */
    record Table(String key, String title, List<Column> columns, List<List<Cell>> rows) implements Block {
        public Table {
            columns = List.copyOf(columns);
            int width = columns.size();
            rows = rows.stream().map(List::copyOf).toList();
            if (rows.stream().anyMatch(row -> row.size() != width)) {
                throw new IllegalArgumentException("A row of \"" + key + "\" has not one cell for each column");
            }
        }

        /** What stands below the first cell of a row. */
        public List<Cell> under(List<Cell> row) {
            return at(Place.UNDER, row);
        }

        /** What stands on a line of its own below a row. */
        public List<Cell> lines(List<Cell> row) {
            return at(Place.LINE, row);
        }

        /** How many columns have a width of their own on a page. */
        public int width() {
            return (int) columns.stream().filter(column -> !column.below()).count();
        }

        private List<Cell> at(Place place, List<Cell> row) {
            return IntStream.range(0, columns.size())
                    .filter(i -> columns.get(i).place() == place)
                    .mapToObj(row::get)
                    .filter(Cell::recorded)
                    .toList();
        }

        /** The same rows for people: a column in which nothing was recorded only takes room from the others. */
        public Table withoutEmptyColumns() {
            int[] kept = IntStream.range(0, columns.size())
                    .filter(i -> rows.stream().anyMatch(row -> row.get(i).recorded()))
                    .toArray();
            return new Table(
                    key,
                    title,
                    Arrays.stream(kept).mapToObj(columns::get).toList(),
                    rows.stream()
                            .map(row -> Arrays.stream(kept).mapToObj(row::get).toList())
                            .toList());
        }
    }

    /**
     * A column of a table.
     *
     * @param key for programs, with the unit of its values: {@code dryKpa}
     * @param head for people, with the unit where every cell has the same
     * @param place where its words stand
     * @param axis drawn under the head where its cells are drawn
     */
    record Column(String key, String head, Place place, Optional<Drawing> axis) {
        static Column words(String key, String head) {
            return new Column(key, head, Place.LEFT, Optional.empty());
        }

        static Column figures(String key, String head) {
            return new Column(key, head, Place.RIGHT, Optional.empty());
        }

        static Column drawn(String key, String head, Drawing axis) {
            return new Column(key, head, Place.LEFT, Optional.of(axis));
        }

        /** Sentences, which need room. */
        static Column sentences(String key, String head) {
            return new Column(key, head, Place.WIDE, Optional.empty());
        }

        /** A remark on the first cell of the row: on a page it stands below it, in plain text in a column of its own. */
        static Column under(String key, String head) {
            return new Column(key, head, Place.UNDER, Optional.empty());
        }

        /** Sentences on the row, seldom any: on a page they stand on a line of their own over its whole width. */
        static Column line(String key, String head) {
            return new Column(key, head, Place.LINE, Optional.empty());
        }

        /** Whether its words stand on the right. */
        public boolean right() {
            return place == Place.RIGHT;
        }

        /** Whether its words are sentences. */
        public boolean wide() {
            return place == Place.WIDE;
        }

        /** Whether it has no width of its own on a page. */
        public boolean below() {
            return place == Place.UNDER || place == Place.LINE;
        }
    }

    /** Where the words of a column stand. */
    enum Place {
        LEFT,
        RIGHT,
        WIDE,
        UNDER,
        LINE
    }
}
