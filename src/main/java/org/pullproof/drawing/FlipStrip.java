package org.pullproof.drawing;

import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;

/** Where an input stands (dot) and from where another option is best (blue mark), on a line from 0. */
public final class FlipStrip {
    private static final double SIDE = 8;
    private static final double LINE = 9;
    private static final double HALF_MARK = 7;
    private static final double WORDS = 28;
    private static final double GAP = 8;
    private static final double ROOM = 1.15;

    private FlipStrip() {}

    /**
     * @param now where it stands
     * @param at where the choice changes
     * @param nowWords figure below the dot
     * @param atWords figure below the mark
     */
    public static Drawing of(
            double now, double at, String nowWords, String atWords, String title, double width, double height) {
        Scale scale = new Scale(0, Math.max(1e-9, Math.max(now, at) * ROOM), SIDE, width - SIDE);
        Pen pen = new Pen();
        pen.line(2, LINE, width - 2, LINE, Stroke.of(Ink.INK2, 1));
        pen.disc(scale.of(now), LINE, 4, Ink.INK);
        pen.line(scale.of(at), LINE - HALF_MARK, scale.of(at), LINE + HALF_MARK, Stroke.of(Ink.BLUE, 2.4));
        Lettering faint = Lettering.FAINT;
        Lettering strong = Lettering.STRONG;
        double half = faint.widthOf(nowWords) / 2;
        double halfAt = strong.widthOf(atWords) / 2;
        double x = within(scale.of(now), half, width);
        double xAt = within(scale.of(at), halfAt, width);
        double overlap = half + halfAt + GAP - Math.abs(xAt - x);
        if (overlap > 0) {
            double push = xAt >= x ? overlap : -overlap;
            xAt = within(xAt + push, halfAt, width);
            x = within(xAt - Math.signum(push) * (half + halfAt + GAP), half, width);
        }
        pen.text(nowWords, x, WORDS, Anchor.MIDDLE, faint);
        pen.text(atWords, xAt, WORDS, Anchor.MIDDLE, strong);
        return pen.picture(width, height, title);
    }

    private static double within(double x, double half, double width) {
        return Math.max(half, Math.min(width - half, x));
    }
}
