package org.pullproof.drawing;

import java.util.List;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;

/** The axes before there is a pull, with what will stand there. */
final class EmptyChart {
    private static final double LEFT = 34;
    private static final Stroke AXIS = Stroke.dashed(Ink.RULE, 1, 5.0, 4.0);
    private static final Lettering SENTENCE = new Lettering(Typeface.NARROW, 13, 400, Ink.INK3, false);

    private EmptyChart() {}

    static Drawing of(double width, double height, String power, String torque) {
        Pen pen = new Pen();
        double right = width - 92;
        List<Frame> frames = Frame.stacked(16, height - 42, 24, List.of(0.42, 0.27, 0.31));
        panel(pen, frames.get(0), right, power, "each setup one line, named at its end");
        panel(pen, frames.get(1), right, torque, "");
        panel(pen, frames.get(2), right, "Difference from base, %", "with a ribbon as wide as base repeats itself");
        pen.text("engine speed, rpm", (LEFT + right) / 2, height - 24, Anchor.MIDDLE, Lettering.FAINT);
        return pen.picture(width, height, "No pull yet: empty axes for power, torque and difference");
    }

    private static void panel(Pen pen, Frame frame, double right, String title, String sentence) {
        pen.polyline(AXIS, LEFT, frame.top(), LEFT, frame.bottom(), right, frame.bottom());
        pen.text(title, LEFT + 6, frame.top() - 5, Anchor.START, Lettering.SECOND);
        if (!sentence.isEmpty()) {
            pen.text(sentence, (LEFT + right) / 2, (frame.top() + frame.bottom()) / 2, Anchor.MIDDLE, SENTENCE);
        }
    }
}
