package org.pullproof.drawing;

import java.util.List;
import java.util.stream.Collectors;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.engine.FiringOrder;

/** The firing order along one cycle of 720°, each cylinder at its own angle. */
public final class FiringStrip {
    private static final double SIDE = 14;
    private static final double LINE = 22;
    private static final Stroke INK = Stroke.of(Ink.INK, 1.2);
    private static final Lettering NUMBER = Lettering.narrow(15, 500, Ink.INK);

    private FiringStrip() {}

    public static Drawing of(FiringOrder firing, double width, double height) {
        Pen pen = new Pen();
        Scale scale = new Scale(0, FiringOrder.CYCLE, SIDE, width - SIDE);
        pen.line(SIDE, LINE, width - SIDE, LINE, INK);
        int angle = 0;
        for (int i = 0; i < firing.cylinders().size(); i++) {
            tick(pen, scale.of(angle), firing.cylinders().get(i));
            angle += firing.intervals().get(i);
        }
        tick(pen, scale.of(FiringOrder.CYCLE), firing.cylinders().get(0));
        angles(pen, firing, scale);
        return pen.picture(width, height, words(firing));
    }

    private static void tick(Pen pen, double x, int cylinder) {
        pen.line(x, LINE - 5, x, LINE + 5, INK);
        pen.text(String.valueOf(cylinder), x, LINE - 10, Anchor.MIDDLE, NUMBER);
    }

    /** The angle below each cylinder, left out where it would touch the one before it or the end. */
    private static void angles(Pen pen, FiringOrder firing, Scale scale) {
        double apart = Lettering.FAINT.widthOf("720°") + 6;
        double last = Double.NEGATIVE_INFINITY;
        int angle = 0;
        for (int interval : firing.intervals()) {
            double x = scale.of(angle);
            if (x - last >= apart && scale.until() - x >= apart) {
                pen.text(angle + "°", x, LINE + 19, Anchor.MIDDLE, Lettering.FAINT);
                last = x;
            }
            angle += interval;
        }
        pen.text(FiringOrder.CYCLE + "°", scale.until(), LINE + 19, Anchor.MIDDLE, Lettering.FAINT);
    }

    /** The order in words: "fires 1 8 4 3 6 5 7 2, every 90°". */
    public static String words(FiringOrder firing) {
        String order = firing.cylinders().stream().map(String::valueOf).collect(Collectors.joining(" "));
        List<Integer> kinds = firing.intervals().stream().distinct().toList();
        if (kinds.size() == 1) {
            return "fires " + order + ", every " + kinds.get(0) + "°";
        }
        if (kinds.size() == 2) {
            return "fires " + order + ", by " + kinds.get(0) + "° and " + kinds.get(1) + "°";
        }
        return "fires " + order + ", by its own intervals";
    }
}
