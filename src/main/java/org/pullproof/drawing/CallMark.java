package org.pullproof.drawing;

import org.pullproof.changes.Call;
import org.pullproof.drawing.Shape.Stroke;

/** The shape of a call; its word always stands beside it. */
public final class CallMark {
    private static final double SIZE = 16;

    private CallMark() {}

    public static Drawing of(Call call) {
        Pen pen = new Pen();
        switch (call) {
            case GAIN -> pen.filled(Ink.INK, 8, 2, 14, 13, 2, 13);
            case LOSS -> pen.filled(Ink.INK, 8, 14, 2, 3, 14, 3);
            case SAME -> {
                Stroke bar = Stroke.of(Ink.INK, 2);
                pen.line(2, 6, 14, 6, bar).line(2, 10.5, 14, 10.5, bar);
            }
            case NO_CALL -> pen.ring(8, 8, 5.5, Stroke.dashed(Ink.INK, 1.5, 2.6, 2.0), Ink.SHEET);
            case SPOILED -> {
                Stroke struck = Stroke.of(Ink.INK, 1.4);
                pen.outlined(3, 3, 10, 10, 0, struck, Ink.SHEET).line(1, 15, 15, 1, struck);
            }
        }
        return pen.picture(SIZE, SIZE, call.words());
    }
}
