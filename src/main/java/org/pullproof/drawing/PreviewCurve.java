package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.dyno.Trace;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/** Power over speed of pulls that are not taken in yet: raw samples, to see at a glance whether the columns are the right ones. */
public final class PreviewCurve {
    private static final double LEFT = 44;
    private static final double TOP = 22;
    private static final double BOTTOM = 24;
    private static final double RIGHT = 28;
    private static final int MOST_TICKS = 4;

    private PreviewCurve() {}

    /** Returns the picture; without pulls only its title. */
    public static Drawing of(List<Trace> pulls, Figures figures, double width, double height) {
        Pen pen = new Pen();
        String title = "Power, " + figures.unit(Shown.POWER).symbol() + ", as it would be read";
        pen.text(title, LEFT, TOP - 8, Anchor.START, Lettering.STRONG);
        if (!pulls.isEmpty()) {
            new Drawn(pulls, figures, width, height, pen).draw();
        }
        return pen.picture(width, height, title);
    }

    private record Drawn(List<Trace> pulls, Figures figures, double width, double height, Pen pen) {
        void draw() {
            double from = pulls.stream().mapToDouble(Trace::firstRpm).min().orElseThrow();
            double to = pulls.stream().mapToDouble(Trace::lastRpm).max().orElseThrow();
            Ticks ticks = Ticks.covering(0, highest(), MOST_TICKS);
            Scale x = new Scale(from, to, LEFT, width - RIGHT);
            Scale y = new Scale(ticks.low(), ticks.high(), height - BOTTOM, TOP);
            ground(ticks, x, y);
            pulls.forEach(pull -> pen.path(points(pull, x, y), Stroke.of(Ink.BLUE, 1.5)));
        }

        private double highest() {
            return Math.max(
                    1,
                    pulls.stream()
                            .flatMapToDouble(
                                    pull -> IntStream.range(0, pull.size()).mapToDouble(i -> power(pull, i)))
                            .max()
                            .orElse(1));
        }

        private double power(Trace pull, int i) {
            return figures.unit(Shown.POWER).fromSi(pull.watt(i));
        }

        private void ground(Ticks ticks, Scale x, Scale y) {
            for (double value : ticks.values()) {
                pen.line(LEFT, y.of(value), width - RIGHT, y.of(value), Stroke.of(Ink.GRID, 1));
                pen.text(
                        Figures.number(value, ticks.decimals()),
                        LEFT - 6,
                        y.of(value) + 4,
                        Anchor.END,
                        Lettering.FAINT);
            }
            for (double speed : Ticks.inside(x.from(), x.to(), MOST_TICKS).values()) {
                pen.text(Figures.number(speed, 0), x.of(speed), height - 8, Anchor.MIDDLE, Lettering.FAINT);
            }
        }

        private List<Point> points(Trace pull, Scale x, Scale y) {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < pull.size(); i++) {
                points.add(new Point(x.of(pull.rpm(i)), y.within(power(pull, i))));
            }
            return points;
        }
    }
}
