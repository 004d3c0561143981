package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Where one panel of a chart stands.
 *
 * @param top px
 * @param bottom px
 */
record Frame(double top, double bottom) {

    /**
     * Panels below each other with room for a title between them.
     *
     * @param shares of the free height, one a panel, against each other
     */
    static List<Frame> stacked(double top, double bottom, double gap, List<Double> shares) {
        double free = bottom - top - (shares.size() - 1) * gap;
        double whole = shares.stream().mapToDouble(Double::doubleValue).sum();
        List<Frame> frames = new ArrayList<>();
        double from = top;
        for (double share : shares) {
            double to = from + share / whole * free;
            frames.add(new Frame(from, to));
            from = to + gap;
        }
        return frames;
    }

    Scale scale(Ticks ticks) {
        return new Scale(ticks.low(), ticks.high(), bottom, top);
    }
}
