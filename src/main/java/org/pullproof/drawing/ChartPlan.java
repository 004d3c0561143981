package org.pullproof.drawing;

import java.util.List;
import org.pullproof.drawing.Pen.Lettering;

/**
 * Where the panels of a chart stand on a picture of one size.
 *
 * @param panels what is drawn
 * @param width of the picture, px
 * @param height of the picture, px
 */
record ChartPlan(ChartPanels panels, double width, double height) {
    static final double LEFT = 44;
    static final double BOTTOM = 42;
    static final double GAP = 24;
    static final double HEAD_LINE = 17;
    private static final double TOP = 16;

    double top() {
        int lines = panels.look().head().size();
        return TOP + (lines == 0 ? 0 : lines * HEAD_LINE + 8);
    }

    double bottom() {
        return height - BOTTOM;
    }

    /** Where the panels end and the names of the lines begin. */
    double right() {
        double longest = panels.setups().stream()
                .mapToDouble(mean -> Lettering.STRONG.widthOf(mean.name()))
                .max()
                .orElse(0);
        return width - Math.max(60, Math.min(width * 0.25, longest + 22));
    }

    Scale rpm() {
        Speeds speeds = panels.speeds();
        return new Scale(speeds.fromRpm(), speeds.toRpm(), LEFT, right());
    }

    List<Frame> frames() {
        return Frame.stacked(
                top(),
                bottom(),
                GAP,
                panels.panels().stream().map(Panel::weight).toList());
    }
}
