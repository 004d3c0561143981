package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.pullproof.changes.Sweep;
import org.pullproof.changes.Sweep.Level;
import org.pullproof.changes.Sweep.Response;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.units.Figures;

/**
 * The response to a numeric setting: pulls, fitted curve with its interval, the best level as an interval, the level to use, the
 * side that knocked hatched, and what is within half a percent of the top as a dimension line.
 */
public final class SweepChart {
    private static final double LEFT = 44;
    private static final double RIGHT = 14;
    private static final double TOP = 26;
    private static final double BOTTOM = 46;
    private static final double HATCH = 7;
    private static final double AS_GOOD = -0.5;
    private static final int MOST_TICKS = 5;

    private final Sweep sweep;
    private final double width;
    private final double height;
    private final Ticks ticks;
    private final Scale x;
    private final Scale y;
    private final Pen pen = new Pen();

    private SweepChart(Sweep sweep, double width, double height) {
        this.sweep = sweep;
        this.width = width;
        this.height = height;
        double[] values = values().toArray();
        this.ticks = Ticks.covering(
                DoubleStream.of(values).min().orElse(-1),
                DoubleStream.of(values).max().orElse(0.5),
                MOST_TICKS);
        double first = sweep.levels().get(0).value();
        double last = sweep.levels().get(sweep.levels().size() - 1).value();
        double margin = (last - first) * 0.12;
        this.x = new Scale(first - margin, last + margin, LEFT, width - RIGHT);
        this.y = new Scale(ticks.low(), ticks.high(), height - BOTTOM, TOP);
    }

    private DoubleStream values() {
        return DoubleStream.concat(
                sweep.levels().stream().flatMap(level -> level.pulls().stream()).mapToDouble(Double::doubleValue),
                sweep.response().stream().mapToDouble(Response::percent));
    }

    /** Returns the picture of one sweep. */
    public static Drawing of(Sweep sweep, double width, double height) {
        return new SweepChart(sweep, width, height).draw();
    }

    private Drawing draw() {
        knock();
        ground();
        ribbon();
        pen.path(points(sweep.response(), Response::percent), Stroke.of(Ink.BLUE, 2));
        sweep.levels().forEach(this::dots);
        use();
        best();
        asGood();
        return pen.picture(
                width,
                height,
                sweep.factor() + " swept: power in percent of the top of the curve. " + sweep.sentence());
    }

    private void ground() {
        for (double value : ticks.values()) {
            pen.line(LEFT, y.of(value), width - RIGHT, y.of(value), Stroke.of(Ink.GRID, 1));
            pen.text(Figures.signed(value, ticks.decimals()), LEFT - 6, y.of(value) + 4, Anchor.END, Lettering.FAINT);
        }
        double bottom = height - BOTTOM;
        pen.line(LEFT, bottom, width - RIGHT, bottom, Stroke.of(Ink.INK, 1));
        for (Level level : sweep.levels()) {
            pen.line(x.of(level.value()), bottom, x.of(level.value()), bottom + 5, Stroke.of(Ink.INK, 1));
            pen.text(figure(level.value(), 0), x.of(level.value()), bottom + 18, Anchor.MIDDLE, Lettering.FAINT);
        }
    }

    /** From the lowest level that knocked on, hatched. */
    private void knock() {
        sweep.levels().stream().filter(Level::knocked).findFirst().ifPresent(level -> {
            double from = x.of(level.value()) - 12;
            double until = width - RIGHT;
            for (double start = from - (height - BOTTOM - TOP); start < until; start += HATCH) {
                hatch(start, from, until);
            }
            pen.line(from, TOP, from, height - BOTTOM, Stroke.of(Ink.RED, 1.2));
            pen.text(
                    "knock",
                    from + 4,
                    TOP + 12,
                    Anchor.START,
                    Lettering.STRONG.in(Ink.RED).onHalo());
        });
    }

    /** One stroke of the hatching, rising to the right, cut off at both sides. */
    private void hatch(double start, double from, double until) {
        double bottom = height - BOTTOM;
        double left = Math.max(start, from);
        double right = Math.min(start + bottom - TOP, until);
        if (right > left) {
            pen.line(left, bottom - (left - start), right, bottom - (right - start), Stroke.of(Ink.REDWASH, 1.2));
        }
    }

    private void ribbon() {
        List<Point> edge = new ArrayList<>(points(sweep.response(), Response::high));
        List<Point> back = new ArrayList<>(points(sweep.response(), Response::low));
        Collections.reverse(back);
        edge.addAll(back);
        pen.filled(edge, Ink.BLUEWASH);
    }

    private interface Height {
        double of(Response at);
    }

    private List<Point> points(List<Response> response, Height height) {
        return response.stream()
                .map(at -> new Point(x.of(at.value()), y.within(height.of(at))))
                .toList();
    }

    private void dots(Level level) {
        int count = level.pulls().size();
        for (int i = 0; i < count; i++) {
            double beside = (i - (count - 1) / 2.0) * 5;
            pen.ring(x.of(level.value()) + beside, y.of(level.pulls().get(i)), 3.2, Stroke.of(Ink.INK, 1.2), Ink.SHEET);
        }
    }

    private void use() {
        sweep.recommended().ifPresent(level -> {
            double at = x.of(level);
            pen.line(at, y.within(percentAt(level)), at, height - BOTTOM, Stroke.of(Ink.BLUE, 1.6));
            Lettering as = Lettering.STRONG.in(Ink.BLUE).onHalo();
            String words = "use " + figure(level, 0);
            boolean room = at - 6 - as.widthOf(words) > LEFT;
            pen.text(words, room ? at - 6 : at + 6, height - BOTTOM - 8, room ? Anchor.END : Anchor.START, as);
        });
    }

    private double percentAt(double level) {
        return sweep.response().stream()
                .min(Comparator.comparingDouble(at -> Math.abs(at.value() - level)))
                .map(Response::percent)
                .orElse(0.0);
    }

    private void best() {
        Lettering as = Lettering.STRONG.onHalo();
        if (!sweep.bounded()) {
            pen.text("no peak proved yet", width - RIGHT, TOP - 10, Anchor.END, as);
            return;
        }
        double low = x.within(sweep.low().orElseThrow());
        double high = x.within(sweep.high().orElseThrow());
        double line = TOP - 14;
        Stroke thick = Stroke.of(Ink.INK, 2);
        Stroke end = Stroke.of(Ink.INK, 1.4);
        pen.line(low, line, high, line, thick)
                .line(low, line - 5, low, line + 5, end)
                .line(high, line - 5, high, line + 5, end);
        pen.disc(x.within(sweep.best()), line, 4, Ink.INK);
        String words = "best " + figure(sweep.best(), 1);
        boolean room = low - 8 - as.widthOf(words) > 0;
        pen.text(words, room ? low - 8 : high + 8, line + 4, room ? Anchor.END : Anchor.START, as);
    }

    private void asGood() {
        List<Response> good =
                sweep.response().stream().filter(at -> at.percent() >= AS_GOOD).toList();
        if (good.size() > 1) {
            double from = good.get(0).value();
            double to = good.get(good.size() - 1).value();
            String words = "within 0.5 % of the top: " + Figures.number(from, 1) + " to " + Figures.number(to, 1);
            DimensionLine.write(pen, x.of(from), x.of(to), height - 10, words, width - RIGHT);
        }
    }

    private String figure(double value, int places) {
        boolean whole = Math.rint(value) == value;
        String number = Figures.number(value, whole ? 0 : Math.max(places, 1));
        return switch (sweep.unit()) {
            case ONE -> number;
            case DEGREE -> number + "°";
            default -> number + Figures.NO_BREAK_SPACE + sweep.unit().symbol();
        };
    }
}
