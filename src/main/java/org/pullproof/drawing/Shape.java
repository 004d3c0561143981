package org.pullproof.drawing;

import java.util.List;
import java.util.Optional;

/** A mark on a drawing; lengths in px at 100 %, y downwards. */
public sealed interface Shape {

    /**
     * How a line is drawn.
     *
     * @param dash lengths on and off, empty for unbroken
     */
    record Stroke(Ink ink, double width, List<Double> dash) {
        public Stroke {
            dash = List.copyOf(dash);
        }

        public static Stroke of(Ink ink, double width) {
            return new Stroke(ink, width, List.of());
        }

        public static Stroke dashed(Ink ink, double width, Double... dash) {
            return new Stroke(ink, width, List.of(dash));
        }
    }

    /** A point. */
    record Point(double x, double y) {}

    /** Which side of its point a text stands on. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** A straight line. */
    record Line(double x1, double y1, double x2, double y2, Stroke stroke) implements Shape {}

    /** Lines from point to point; closed and filled where a fill is given. */
    record Path(List<Point> points, boolean closed, Optional<Stroke> stroke, Optional<Ink> fill) implements Shape {
        public Path {
            points = List.copyOf(points);
        }
    }

    /**
     * A rectangle.
     *
     * @param radius of its corners
     */
    record Box(
            double x, double y, double width, double height, double radius, Optional<Stroke> stroke, Optional<Ink> fill)
            implements Shape {}

    /** A circle. */
    record Circle(double x, double y, double radius, Optional<Stroke> stroke, Optional<Ink> fill) implements Shape {}

    /**
     * Words on one line.
     *
     * @param x of the anchor
     * @param y of the base line
     * @param size in px
     * @param weight 400, 500 or 600
     * @param halo whether a filled rectangle of the sheet's colour stands behind it
     */
    record Text(
            String words,
            double x,
            double y,
            Anchor anchor,
            Typeface face,
            double size,
            int weight,
            Ink ink,
            boolean halo)
            implements Shape {}
}
