package org.pullproof.ui.help;

import java.util.List;

/** A piece of the guide that stands on lines of its own. */
sealed interface GuideBlock {
    /** A heading within a chapter. */
    record Heading(String words) implements GuideBlock {}

    /** A paragraph. */
    record Paragraph(List<GuideRun> runs) implements GuideBlock {
        public Paragraph {
            runs = List.copyOf(runs);
        }
    }

    /** One point of a list. */
    record Point(List<GuideRun> runs) implements GuideBlock {
        public Point {
            runs = List.copyOf(runs);
        }
    }

    /**
     * A table.
     *
     * @param rows its rows, the head first, each with its cells
     */
    record Table(List<List<List<GuideRun>>> rows) implements GuideBlock {
        public Table {
            rows = List.copyOf(rows);
        }
    }

    /** Lines to be typed as they stand. */
    record Code(String lines) implements GuideBlock {}
}
