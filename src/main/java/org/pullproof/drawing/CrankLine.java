package org.pullproof.drawing;

import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;

/** The line of the crank between two rows of cylinders, with the arrow to the front and words in its middle. */
public final class CrankLine {
    private CrankLine() {}

    public static Drawing of(String words, double width, double height) {
        double y = height / 2;
        Pen pen = new Pen();
        pen.line(18, y, width - 2, y, Stroke.dashed(Ink.INK2, 0.8, 14.0, 3.0, 3.0, 3.0));
        EnginePlan.frontArrow(pen, y);
        pen.text(words, width / 2, y + 4, Anchor.MIDDLE, Lettering.SECOND.onHalo());
        return pen.picture(width, height, "crank, front to the left; " + words);
    }
}
