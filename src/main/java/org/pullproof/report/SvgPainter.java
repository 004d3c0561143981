package org.pullproof.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.drawing.Drawing;
import org.pullproof.drawing.Ink;
import org.pullproof.drawing.Shape;
import org.pullproof.drawing.TextWidth;
import org.pullproof.drawing.Typeface;

/**
 * Paints a drawing as SVG: lengths with one decimal, colours as {@code #rrggbb}, typefaces by name. Words are escaped here, so
 * what comes out may be set into a page as it is.
 */
public final class SvgPainter {
    /** Room between a label and the edge of its halo, px. */
    private static final double HALO_EDGE = 2;

    private final Palette palette;

    public SvgPainter(Palette palette) {
        this.palette = palette;
    }

    /** An element to stand inside a page. */
    public String paint(Drawing drawing) {
        long width = whole(drawing.width());
        long height = whole(drawing.height());
        String shapes = drawing.shapes().stream().map(this::shape).collect(Collectors.joining());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"" + width + "\" height=\"" + height
                + "\" viewBox=\"0 0 " + width + " " + height + "\"><title>" + Markup.escaped(drawing.title())
                + "</title>"
                + shapes + "</svg>";
    }

    /** The PDF writer takes a size with decimals for none at all. */
    private static long whole(double length) {
        return (long) Math.ceil(length);
    }

    /** A file of its own: the sheet painted behind the drawing, so it can be read on any ground. */
    public String file(Drawing drawing) {
        Shape ground =
                new Shape.Box(0, 0, drawing.width(), drawing.height(), 0, Optional.empty(), Optional.of(Ink.SHEET));
        List<Shape> shapes =
                Stream.concat(Stream.of(ground), drawing.shapes().stream()).toList();
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + paint(new Drawing(drawing.width(), drawing.height(), drawing.title(), shapes)) + "\n";
    }

    private String shape(Shape shape) {
        if (shape instanceof Shape.Line line) {
            return line(line);
        } else if (shape instanceof Shape.Path path) {
            return path(path);
        } else if (shape instanceof Shape.Box box) {
            return box(box);
        } else if (shape instanceof Shape.Circle circle) {
            return circle(circle);
        } else if (shape instanceof Shape.Text text) {
            return (text.halo() ? halo(text) : "") + text(text);
        }
        throw new IllegalArgumentException("No way to paint " + shape);
    }

    private String line(Shape.Line line) {
        return "<line x1=\"" + px(line.x1()) + "\" y1=\"" + px(line.y1()) + "\" x2=\"" + px(line.x2()) + "\" y2=\""
                + px(line.y2()) + "\"" + stroke(Optional.of(line.stroke())) + "/>";
    }

    private String path(Shape.Path path) {
        if (path.points().isEmpty()) {
            return "";
        }
        String points = path.points().stream()
                .map(point -> px(point.x()) + " " + px(point.y()))
                .collect(Collectors.joining("L", "M", path.closed() ? "Z" : ""));
        return "<path d=\"" + points + "\" stroke-linejoin=\"round\"" + fill(path.fill()) + stroke(path.stroke())
                + "/>";
    }

    private String box(Shape.Box box) {
        String radius = box.radius() > 0 ? " rx=\"" + px(box.radius()) + "\"" : "";
        return "<rect x=\"" + px(box.x()) + "\" y=\"" + px(box.y()) + "\" width=\"" + px(box.width()) + "\" height=\""
                + px(box.height()) + "\"" + radius + fill(box.fill()) + stroke(box.stroke()) + "/>";
    }

    private String circle(Shape.Circle circle) {
        return "<circle cx=\"" + px(circle.x()) + "\" cy=\"" + px(circle.y()) + "\" r=\"" + px(circle.radius()) + "\""
                + fill(circle.fill()) + stroke(circle.stroke()) + "/>";
    }

    private String text(Shape.Text text) {
        return "<text x=\"" + px(text.x()) + "\" y=\"" + px(text.y()) + "\" font-family=\"" + families(text)
                + "\" font-size=\"" + px(text.size()) + "\" font-weight=\"" + text.weight() + "\" text-anchor=\""
                + text.anchor().name().toLowerCase(Locale.ROOT) + "\"" + fill(Optional.of(text.ink())) + ">"
                + Markup.escaped(text.words()) + "</text>";
    }

    /** A rectangle of the sheet's colour behind a label; its width is estimated, SVG cannot measure words. */
    private String halo(Shape.Text text) {
        double width = TextWidth.of(text.words(), text.face(), text.size(), text.weight());
        double left = switch (text.anchor()) {
            case START -> text.x();
            case MIDDLE -> text.x() - width / 2;
            case END -> text.x() - width;
        };
        return box(new Shape.Box(
                left - HALO_EDGE,
                text.y() - text.size(),
                width + 2 * HALO_EDGE,
                text.size() * 1.3,
                0,
                Optional.empty(),
                Optional.of(Ink.SHEET)));
    }

    /** A heavier weight is asked for by its own family first: some readers find it by no other way. */
    private static String families(Shape.Text text) {
        String family = family(text.face());
        return switch (text.weight()) {
            case 600 -> "'" + family + " SemiBold', '" + family + "'";
            case 500 -> "'" + family + " Medium', '" + family + "'";
            default -> family;
        };
    }

    private static String family(Typeface face) {
        return switch (face) {
            case TEXT -> "IBM Plex Sans";
            case NARROW -> "IBM Plex Sans Condensed";
            case VOICE -> "Source Serif 4";
        };
    }

    private String fill(Optional<Ink> ink) {
        return " fill=\"" + ink.map(palette::of).orElse("none") + "\"";
    }

    private String stroke(Optional<Shape.Stroke> stroke) {
        return stroke.map(this::stroke).orElse("");
    }

    private String stroke(Shape.Stroke stroke) {
        String dash = stroke.dash().isEmpty()
                ? ""
                : " stroke-dasharray=\""
                        + stroke.dash().stream().map(SvgPainter::px).collect(Collectors.joining(" ")) + "\"";
        return " stroke=\"" + palette.of(stroke.ink()) + "\" stroke-width=\"" + px(stroke.width()) + "\"" + dash;
    }

    private static String px(double length) {
        String shown = String.format(Locale.ROOT, "%.1f", length);
        return shown.equals("-0.0") ? "0.0" : shown;
    }
}
