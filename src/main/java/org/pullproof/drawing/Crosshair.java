package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.pullproof.drawing.Panel.SetupLine;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.units.Figures;

/**
 * One hairline through all panels at a speed, a hollow dot on every line, and one box with what they read. It is drawn on a layer
 * of its own, so that the curves stay while it moves.
 */
public final class Crosshair {
    private static final double ROW = 17;
    private static final double PADDING = 9;
    private static final double AWAY = 10;
    private static final double COLUMN_GAP = 14;
    private static final double DOT = 3.5;

    private final ChartPanels panels;
    private final ChartPlan plan;
    private final int rpm;
    private final double x;
    private final Pen pen = new Pen();

    private Crosshair(ChartPanels panels, int rpm, double width, double height) {
        this.panels = panels;
        this.plan = new ChartPlan(panels, width, height);
        this.rpm = rpm;
        this.x = plan.rpm().of(rpm);
    }

    /** The layer at a speed; empty where the speed is not in sight. */
    public static Drawing at(ChartPanels panels, int rpm, double width, double height) {
        return panels.isEmpty() || !panels.speeds().holds(rpm)
                ? new Drawing(width, height, "", List.of())
                : new Crosshair(panels, rpm, width, height).draw();
    }

    /** The speed under a point of the picture, in steps of the curves; empty beside the panels. */
    public static OptionalInt rpmAt(ChartPanels panels, double x, double width, double height) {
        Scale rpm = new ChartPlan(panels, width, height).rpm();
        double share = (x - rpm.at()) / (rpm.until() - rpm.at());
        if (panels.isEmpty() || share < -0.01 || share > 1.01) {
            return OptionalInt.empty();
        }
        double speed = rpm.from() + Math.max(0, Math.min(1, share)) * (rpm.to() - rpm.from());
        return OptionalInt.of((int) Math.round(speed / PowerCurve.STEP) * PowerCurve.STEP);
    }

    /** The band between two speeds while a range is being chosen. */
    public static Drawing range(ChartPanels panels, Speeds chosen, double width, double height) {
        ChartPlan plan = new ChartPlan(panels, width, height);
        double from = plan.rpm().within(chosen.fromRpm());
        double to = plan.rpm().within(chosen.toRpm());
        Stroke edge = Stroke.of(Ink.BLUE, 1);
        return new Pen()
                .line(from, plan.top(), from, plan.bottom(), edge)
                .line(to, plan.top(), to, plan.bottom(), edge)
                .line(from, plan.bottom() + 2, to, plan.bottom() + 2, Stroke.of(Ink.BLUE, 4))
                .picture(width, height, "from " + chosen.fromRpm() + " to " + chosen.toRpm() + " rpm");
    }

    private Drawing draw() {
        pen.line(x, plan.top(), x, plan.bottom(), Stroke.of(Ink.BLUE, 1));
        dots();
        box(readings());
        return pen.picture(plan.width(), plan.height(), words());
    }

    private void dots() {
        List<Frame> frames = plan.frames();
        for (int i = 0; i < frames.size(); i++) {
            Panel panel = panels.panels().get(i);
            Scale y = frames.get(i).scale(PowerChart.ticks(panel, frames.get(i)));
            for (SetupLine line : panel.lines()) {
                line.at(rpm).ifPresent(value -> pen.ring(x, y.of(value), DOT, ink(line), Ink.SHEET));
            }
        }
    }

    private Stroke ink(SetupLine line) {
        return Stroke.of(panels.chosen(line.setup()) ? Ink.BLUE : Ink.INK, 1.5);
    }

    /**
     * What one setup reads.
     *
     * @param name of the setup
     * @param chosen whether it is the one looked at
     * @param cells one a panel
     */
    private record Reading(String name, boolean chosen, List<String> cells) {}

    private List<Reading> readings() {
        List<Reading> readings = new ArrayList<>();
        readings.add(new Reading(
                Figures.number(rpm, 0) + Figures.NO_BREAK_SPACE + "rpm",
                true,
                panels.panels().stream().map(Panel::head).toList()));
        for (SetupLine line : panels.panels().get(0).lines()) {
            readings.add(new Reading(
                    line.name(),
                    panels.chosen(line.setup()),
                    panels.panels().stream()
                            .map(panel -> cell(panel, line.setup()))
                            .toList()));
        }
        return readings;
    }

    private String cell(Panel panel, String setup) {
        OptionalDouble value = panel.lines().stream()
                .filter(line -> line.setup().equals(setup))
                .map(line -> line.at(rpm))
                .flatMapToDouble(OptionalDouble::stream)
                .findFirst();
        if (value.isEmpty()) {
            return "–";
        }
        boolean base = panel.signed() && setup.equals(panel.lines().get(0).setup());
        if (base) {
            return panel.ribbon().isPresent()
                    ? "± " + Figures.percent(panel.ribbon().getAsDouble(), 1) + " a pull"
                    : Figures.percent(0, 0);
        }
        return panel.signed()
                ? Figures.signedPercent(value.getAsDouble(), panel.decimals())
                : Figures.number(value.getAsDouble(), panel.decimals());
    }

    /** Left of the line in the lower part where curves are not; right of it where there is no room. */
    private void box(List<Reading> readings) {
        List<Double> columns = columns(readings);
        double wide = columns.stream().mapToDouble(Double::doubleValue).sum()
                + COLUMN_GAP * (columns.size() - 1)
                + 2 * PADDING;
        double high = readings.size() * ROW + PADDING;
        boolean left = x - AWAY - wide >= 0;
        double from = left ? x - AWAY - wide : Math.min(x + AWAY, Math.max(0, plan.width() - wide));
        double top = Math.max(0, plan.frames().get(0).bottom() - high - 2);
        pen.outlined(from, top, wide, high, 0, Stroke.of(Ink.BLUE, 1), Ink.SHEET);
        double y = top + ROW - 2;
        for (Reading reading : readings) {
            write(reading, from + PADDING, y, columns, y < top + ROW);
            y += ROW;
        }
    }

    private void write(Reading reading, double from, double y, List<Double> columns, boolean head) {
        Lettering name = reading.chosen() ? Lettering.STRONG.in(Ink.BLUE) : Lettering.PLAIN;
        pen.text(reading.name(), from, y, Anchor.START, name);
        double right = from + columns.get(0);
        Lettering figures = head ? Lettering.FAINT : name;
        for (int i = 0; i < reading.cells().size(); i++) {
            right += COLUMN_GAP + columns.get(i + 1);
            pen.text(reading.cells().get(i), right, y, Anchor.END, figures);
        }
    }

    private static List<Double> columns(List<Reading> readings) {
        List<Double> widths = new ArrayList<>();
        widths.add(widest(readings.stream().map(Reading::name).toList()));
        for (int i = 0; i < readings.get(0).cells().size(); i++) {
            int column = i;
            widths.add(widest(readings.stream()
                    .map(reading -> reading.cells().get(column))
                    .toList()));
        }
        return widths;
    }

    private static double widest(List<String> words) {
        return words.stream().mapToDouble(Lettering.STRONG::widthOf).max().orElse(0);
    }

    /** For people who cannot see it: "4,240 rpm; base: hp 208.9, …". */
    private String words() {
        List<Reading> readings = readings();
        List<String> heads = readings.get(0).cells();
        StringBuilder words = new StringBuilder(readings.get(0).name());
        for (Reading reading : readings.subList(1, readings.size())) {
            words.append("; ").append(reading.name()).append(':');
            for (int i = 0; i < heads.size(); i++) {
                words.append(' ')
                        .append(heads.get(i))
                        .append(' ')
                        .append(reading.cells().get(i));
            }
        }
        return words.toString();
    }
}
