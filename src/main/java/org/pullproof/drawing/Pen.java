package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;

/** Collects the shapes of one picture in painting order. */
final class Pen {
    private final List<Shape> shapes = new ArrayList<>();

    /** How words are set. */
    record Lettering(Typeface face, double size, int weight, Ink ink, boolean halo) {
        static final Lettering FAINT = narrow(12, 400, Ink.INK3);
        static final Lettering SECOND = narrow(12, 400, Ink.INK2);
        static final Lettering PLAIN = narrow(12, 400, Ink.INK);
        static final Lettering STRONG = narrow(12, 600, Ink.INK);

        static Lettering narrow(double size, int weight, Ink ink) {
            return new Lettering(Typeface.NARROW, size, weight, ink, false);
        }

        Lettering in(Ink other) {
            return new Lettering(face, size, weight, other, halo);
        }

        Lettering onHalo() {
            return new Lettering(face, size, weight, ink, true);
        }

        double widthOf(String words) {
            return TextWidth.of(words, face, size, weight);
        }
    }

    Pen line(double x1, double y1, double x2, double y2, Stroke stroke) {
        shapes.add(new Shape.Line(x1, y1, x2, y2, stroke));
        return this;
    }

    /** A line through points given as x, y, x, y, … */
    Pen polyline(Stroke stroke, double... xy) {
        return path(points(xy), stroke);
    }

    Pen path(List<Point> points, Stroke stroke) {
        shapes.add(new Shape.Path(points, false, Optional.of(stroke), Optional.empty()));
        return this;
    }

    Pen filled(Ink ink, double... xy) {
        return filled(points(xy), ink);
    }

    Pen filled(List<Point> points, Ink ink) {
        shapes.add(new Shape.Path(points, true, Optional.empty(), Optional.of(ink)));
        return this;
    }

    Pen outlined(double x, double y, double width, double height, double radius, Stroke stroke, Ink fill) {
        shapes.add(new Shape.Box(x, y, width, height, radius, Optional.of(stroke), Optional.of(fill)));
        return this;
    }

    Pen block(double x, double y, double width, double height, Ink fill) {
        shapes.add(new Shape.Box(x, y, width, height, 0, Optional.empty(), Optional.of(fill)));
        return this;
    }

    Pen ring(double x, double y, double radius, Stroke stroke, Ink fill) {
        shapes.add(new Shape.Circle(x, y, radius, Optional.of(stroke), Optional.of(fill)));
        return this;
    }

    /** A ring that lets through what is below it. */
    Pen circle(double x, double y, double radius, Stroke stroke) {
        shapes.add(new Shape.Circle(x, y, radius, Optional.of(stroke), Optional.empty()));
        return this;
    }

    Pen disc(double x, double y, double radius, Ink fill) {
        shapes.add(new Shape.Circle(x, y, radius, Optional.empty(), Optional.of(fill)));
        return this;
    }

    Pen text(String words, double x, double y, Anchor anchor, Lettering as) {
        shapes.add(new Shape.Text(words, x, y, anchor, as.face(), as.size(), as.weight(), as.ink(), as.halo()));
        return this;
    }

    Drawing picture(double width, double height, String title) {
        return new Drawing(width, height, title, shapes);
    }

    private static List<Point> points(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i + 1 < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return points;
    }
}
