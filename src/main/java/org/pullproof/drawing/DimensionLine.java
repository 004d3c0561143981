package org.pullproof.drawing;

import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;

/** A measure: a line with arrows between two ticks and words in its middle. */
final class DimensionLine {
    private DimensionLine() {}

    /** Writes the words in the line, or beside it towards {@code limit} where the line is too short for them. */
    static void write(Pen pen, double from, double to, double y, String words, double limit) {
        Stroke thin = Stroke.of(Ink.INK2, 1);
        pen.line(from, y, to, y, thin).line(from, y - 5, from, y + 5, thin).line(to, y - 5, to, y + 5, thin);
        pen.filled(Ink.INK, from, y, from + 8, y - 3, from + 8, y + 3);
        pen.filled(Ink.INK, to, y, to - 8, y - 3, to - 8, y + 3);
        Lettering as = Lettering.SECOND.onHalo();
        double wide = as.widthOf(words);
        if (wide + 28 <= to - from) {
            pen.text(words, (from + to) / 2, y + 4, Anchor.MIDDLE, as);
        } else if (to + 8 + wide <= limit) {
            pen.text(words, to + 8, y + 4, Anchor.START, as);
        } else {
            pen.text(words, Math.max(wide, from - 8), y + 4, Anchor.END, as);
        }
    }
}
