package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import org.pullproof.changes.CurveBand;
import org.pullproof.changes.CurveBand.Point;
import org.pullproof.changes.CurveBand.Region;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.units.Figures;

/** A difference over engine speed with the band that holds the whole true curve nine times in ten; claimed regions below. */
public final class BandChart {
    private static final double LEFT = 44;
    private static final double RIGHT = 34;
    private static final double TOP = 10;
    private static final double BOTTOM = 44;
    private static final int MOST_TICKS = 5;

    private final CurveBand band;
    private final double width;
    private final double height;
    private final Ticks ticks;
    private final Scale rpm;
    private final Scale y;
    private final Pen pen = new Pen();

    private BandChart(CurveBand band, double width, double height) {
        this.band = band;
        this.width = width;
        this.height = height;
        double[] values = band.points().stream()
                .flatMapToDouble(point -> DoubleStream.of(point.low(), point.high(), 0))
                .toArray();
        this.ticks = Ticks.covering(
                DoubleStream.of(values).min().orElse(-1),
                DoubleStream.of(values).max().orElse(1),
                MOST_TICKS);
        int last = band.points().size() - 1;
        this.rpm = new Scale(band.points().get(0).rpm(), band.points().get(last).rpm(), LEFT, width - RIGHT);
        this.y = new Scale(ticks.low(), ticks.high(), height - BOTTOM, TOP);
    }

    /** Returns the picture of one difference. */
    public static Drawing of(CurveBand band, double width, double height) {
        return new BandChart(band, width, height).draw();
    }

    private Drawing draw() {
        ribbon();
        ground();
        pen.path(edge(Point::percent), Stroke.of(Ink.BLUE, 2));
        speeds();
        band.regions().forEach(this::region);
        if (band.regions().isEmpty()) {
            pen.text("at no speed alone", (LEFT + width - RIGHT) / 2, height - 8, Anchor.MIDDLE, Lettering.SECOND);
        }
        return pen.picture(width, height, "Difference over engine speed, percent, with its 90 % band");
    }

    private void ground() {
        for (double value : ticks.values()) {
            Stroke line = value == 0 ? Stroke.of(Ink.INK, 0.8) : Stroke.of(Ink.GRID, 1);
            pen.line(LEFT, y.of(value), width - RIGHT, y.of(value), line);
            pen.text(Figures.signed(value, ticks.decimals()), LEFT - 6, y.of(value) + 4, Anchor.END, Lettering.FAINT);
        }
    }

    private void ribbon() {
        List<Shape.Point> around = new ArrayList<>(edge(Point::high));
        List<Shape.Point> back = new ArrayList<>(edge(Point::low));
        Collections.reverse(back);
        around.addAll(back);
        pen.filled(around, Ink.BLUEWASH);
    }

    private interface Height {
        double of(Point at);
    }

    private List<Shape.Point> edge(Height height) {
        return band.points().stream()
                .map(at -> new Shape.Point(rpm.of(at.rpm()), y.of(height.of(at))))
                .toList();
    }

    private void speeds() {
        double bottom = height - BOTTOM;
        pen.line(LEFT, bottom, width - RIGHT, bottom, Stroke.of(Ink.INK, 1));
        for (double speed : Ticks.inside(rpm.from(), rpm.to(), MOST_TICKS).values()) {
            pen.line(rpm.of(speed), bottom, rpm.of(speed), bottom + 5, Stroke.of(Ink.INK, 1));
            pen.text(Figures.number(speed, 0), rpm.of(speed), bottom + 18, Anchor.MIDDLE, Lettering.FAINT);
        }
        pen.text("rpm", width - 2, bottom + 4, Anchor.END, Lettering.FAINT);
    }

    private void region(Region region) {
        String words = (region.sign() > 0 ? "gained" : "lost") + " at least from " + Figures.number(region.fromRpm(), 0)
                + " to " + Figures.number(region.toRpm(), 0);
        DimensionLine.write(pen, rpm.of(region.fromRpm()), rpm.of(region.toRpm()), height - 10, words, width);
    }
}
