package org.pullproof.ui.parts;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.pullproof.drawing.Drawing;
import org.pullproof.drawing.Ink;
import org.pullproof.drawing.Shape;
import org.pullproof.drawing.Typeface;

/** Paints a {@link Drawing} on a canvas. Works on the FX thread only. */
final class CanvasPainter {
    private static final double HALO = 2;

    private final GraphicsContext canvas;
    private final Palette palette;

    CanvasPainter(GraphicsContext canvas, Palette palette) {
        this.canvas = canvas;
        this.palette = palette;
    }

    void paint(Drawing drawing) {
        canvas.clearRect(0, 0, canvas.getCanvas().getWidth(), canvas.getCanvas().getHeight());
        canvas.setLineCap(StrokeLineCap.BUTT);
        canvas.setLineJoin(StrokeLineJoin.MITER);
        drawing.shapes().forEach(this::paint);
    }

    private void paint(Shape shape) {
        // a pattern switch needs a later Java
        if (shape instanceof Shape.Line line) {
            paint(line);
        } else if (shape instanceof Shape.Path path) {
            paint(path);
        } else if (shape instanceof Shape.Box box) {
            paint(box);
        } else if (shape instanceof Shape.Circle circle) {
            paint(circle);
        } else if (shape instanceof Shape.Text text) {
            paint(text);
        }
    }

    private void paint(Shape.Line line) {
        use(line.stroke());
        boolean upright = line.x1() == line.x2();
        boolean level = line.y1() == line.y2();
        double width = line.stroke().width();
        canvas.strokeLine(
                upright ? crisp(line.x1(), width) : line.x1(),
                level ? crisp(line.y1(), width) : line.y1(),
                upright ? crisp(line.x2(), width) : line.x2(),
                level ? crisp(line.y2(), width) : line.y2());
    }

    private void paint(Shape.Path path) {
        if (path.points().isEmpty()) {
            return;
        }
        trace(path.points(), path.closed());
        path.fill().ifPresent(ink -> {
            canvas.setFill(palette.of(ink));
            canvas.fill();
        });
        path.stroke().ifPresent(stroke -> {
            use(stroke);
            canvas.stroke();
        });
    }

    private void trace(List<Shape.Point> points, boolean closed) {
        canvas.beginPath();
        canvas.moveTo(points.get(0).x(), points.get(0).y());
        for (Shape.Point point : points.subList(1, points.size())) {
            canvas.lineTo(point.x(), point.y());
        }
        if (closed) {
            canvas.closePath();
        }
    }

    private void paint(Shape.Box box) {
        double arc = 2 * box.radius();
        box.fill().ifPresent(ink -> {
            canvas.setFill(palette.of(ink));
            canvas.fillRoundRect(box.x(), box.y(), box.width(), box.height(), arc, arc);
        });
        box.stroke().ifPresent(stroke -> {
            use(stroke);
            double x = crisp(box.x(), stroke.width());
            double y = crisp(box.y(), stroke.width());
            double right = crisp(box.x() + box.width(), stroke.width());
            double bottom = crisp(box.y() + box.height(), stroke.width());
            canvas.strokeRoundRect(x, y, right - x, bottom - y, arc, arc);
        });
    }

    private void paint(Shape.Circle circle) {
        double left = circle.x() - circle.radius();
        double top = circle.y() - circle.radius();
        double across = 2 * circle.radius();
        circle.fill().ifPresent(ink -> {
            canvas.setFill(palette.of(ink));
            canvas.fillOval(left, top, across, across);
        });
        circle.stroke().ifPresent(stroke -> {
            use(stroke);
            canvas.strokeOval(left, top, across, across);
        });
    }

    private void paint(Shape.Text text) {
        Font font = fontOf(text);
        if (text.halo()) {
            paintHalo(text, font);
        }
        canvas.setFont(font);
        canvas.setFill(palette.of(text.ink()));
        canvas.setTextAlign(
                switch (text.anchor()) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        canvas.fillText(text.words(), text.x(), text.y());
    }

    /** Ω and μ are missing in the narrow face; words with one are set in the wide one. */
    private static Font fontOf(Shape.Text text) {
        boolean missing = text.words().matches("(?s).*[\u03a9\u2126\u03bc\u00b5].*");
        Typeface face = missing && text.face() == Typeface.NARROW ? Typeface.TEXT : text.face();
        return Fonts.of(face, text.weight(), text.size());
    }

    private void paintHalo(Shape.Text text, Font font) {
        Text measured = new Text(text.words());
        measured.setFont(font);
        Bounds bounds = measured.getLayoutBounds();
        double left = switch (text.anchor()) {
            case START -> text.x();
            case MIDDLE -> text.x() - bounds.getWidth() / 2;
            case END -> text.x() - bounds.getWidth();
        };
        canvas.setFill(palette.of(Ink.SHEET));
        // the box of a line of type is taller than its figures; their height is about 0.72 of the size
        double height = 0.72 * text.size();
        canvas.fillRect(left - HALO, text.y() - height - HALO, bounds.getWidth() + 2 * HALO, height + 2 * HALO);
    }

    private void use(Shape.Stroke stroke) {
        canvas.setStroke(palette.of(stroke.ink()));
        canvas.setLineWidth(stroke.width());
        canvas.setLineDashes(
                stroke.dash().stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Puts a line of about one pixel on the middle of a pixel, so that it is not smeared over two. */
    private static double crisp(double at, double width) {
        return width < 2 ? Math.floor(at) + 0.5 : Math.rint(at);
    }
}
