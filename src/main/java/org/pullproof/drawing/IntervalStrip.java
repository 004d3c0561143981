package org.pullproof.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.pullproof.changes.Call;
import org.pullproof.changes.JudgedChange;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.units.Figures;

/**
 * Differences with their 90 % intervals, one strip a change over one shared axis: bar for the interval, dot for the estimate,
 * shade for the smallest difference worth paying for. A hollow dot makes no call, a broken bar is spoiled.
 */
public final class IntervalStrip {
    private static final double SIDE = 34;
    private static final double BAR = 14.5;
    private static final int MOST_TICKS = 7;

    private final Ticks ticks;
    private final double smallest;
    private final Scale scale;
    private final double width;

    /**
     * @param changes what stands over the shared axis
     * @param smallestPercent the smallest difference worth paying for, percent
     * @param width of each strip, px
     */
    public IntervalStrip(List<JudgedChange> changes, double smallestPercent, double width) {
        this.smallest = smallestPercent;
        this.width = width;
        double low = ends(changes).min(Double::compare).orElse(0.0);
        double high = ends(changes).max(Double::compare).orElse(0.0);
        this.ticks = Ticks.covering(Math.min(low, -smallestPercent), Math.max(high, smallestPercent), MOST_TICKS);
        this.scale = new Scale(ticks.low(), ticks.high(), SIDE, width - SIDE);
    }

    private static Stream<Double> ends(List<JudgedChange> changes) {
        return changes.stream().flatMap(change -> Stream.of(change.low(), change.high()));
    }

    /** The figures of the axis, to stand over the strips. */
    public Drawing axis(double height) {
        Pen pen = new Pen();
        for (double value : ticks.values()) {
            pen.text(figure(value, ticks.decimals()), scale.of(value), height - 4, Anchor.MIDDLE, Lettering.FAINT);
        }
        return pen.picture(width, height, "axis: difference of band power, percent");
    }

    /** One change. */
    public Drawing strip(JudgedChange change, double height) {
        Pen pen = new Pen();
        ground(pen, height);
        bar(pen, change);
        double x = scale.of(change.differencePercent());
        if (hollow(change.call())) {
            pen.ring(x, BAR, 4.5, Stroke.of(Ink.INK, 1.6), Ink.SHEET);
        } else {
            pen.disc(x, BAR, 4.5, Ink.INK);
        }
        figures(pen, change, x);
        return pen.picture(width, height, title(change));
    }

    private void ground(Pen pen, double height) {
        double from = scale.of(-smallest);
        pen.block(from, 0, scale.of(smallest) - from, height, Ink.WELL);
        for (double value : ticks.values()) {
            double x = scale.of(value);
            pen.line(x, 0, x, height, Stroke.of(value == 0 ? Ink.INK : Ink.GRID, 1));
        }
    }

    private void bar(Pen pen, JudgedChange change) {
        Ink ink = hollow(change.call()) ? Ink.INK2 : Ink.INK;
        double low = scale.of(change.low());
        double high = scale.of(change.high());
        Stroke bar = change.call() == Call.SPOILED ? Stroke.dashed(ink, 2, 4.0, 3.0) : Stroke.of(ink, 2);
        Stroke end = Stroke.of(ink, 1.4);
        pen.line(low, BAR, high, BAR, bar);
        pen.line(low, BAR - 5, low, BAR + 5, end).line(high, BAR - 5, high, BAR + 5, end);
    }

    private void figures(Pen pen, JudgedChange change, double x) {
        Lettering ends = Lettering.SECOND.onHalo();
        pen.text(figure(change.low(), 1), scale.of(change.low()) - 6, BAR + 4, Anchor.END, ends);
        pen.text(figure(change.high(), 1), scale.of(change.high()) + 6, BAR + 4, Anchor.START, ends);
        String estimate = Figures.signedPercent(change.differencePercent(), 1);
        Lettering strong = Lettering.narrow(13, 600, Ink.INK).onHalo();
        double half = strong.widthOf(estimate) / 2;
        pen.text(estimate, Math.max(half, Math.min(width - half, x)), BAR + 20, Anchor.MIDDLE, strong);
    }

    private static boolean hollow(Call call) {
        return call == Call.NO_CALL || call == Call.SPOILED;
    }

    private static String figure(double percent, int decimals) {
        return Figures.signed(percent, decimals);
    }

    private static String title(JudgedChange change) {
        return change.name() + ": " + Figures.signedPercent(change.differencePercent(), 1) + ", 90 % from "
                + Figures.signed(change.low(), 1) + " to " + Figures.signedPercent(change.high(), 1) + ", "
                + change.call().words();
    }
}
