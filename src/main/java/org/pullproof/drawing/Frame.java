package org.pullproof.drawing;

import java.util.List;

/**
 * Where one panel of a chart stands.
 *
 * @param top px
 * @param bottom px
 */
record Frame(double top, double bottom) {
    private static final double POWER = 0.42;
    private static final double TORQUE = 0.27;

    /** Three panels below each other with room for a title between them. */
    static List<Frame> stacked(double top, double bottom, double gap) {
        double free = bottom - top - 2 * gap;
        Frame power = new Frame(top, top + POWER * free);
        Frame torque = new Frame(power.bottom + gap, power.bottom + gap + TORQUE * free);
        return List.of(power, torque, new Frame(torque.bottom + gap, bottom));
    }

    Scale scale(Ticks ticks) {
        return new Scale(ticks.low(), ticks.high(), bottom, top);
    }
}
