package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.drawing.Panel.PullLine;
import org.pullproof.drawing.Panel.SetupLine;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import org.pullproof.weather.Standard;

/**
 * Power, torque, what else was logged, and difference from base over engine speed, one panel below the other. Lines tell setups,
 * names stand at their ends, the hairlines are the pulls. Where a speed was not covered there is no line.
 */
public final class PowerChart {
    /** Along the speeds a line may be this coarse, px; up and down only half of that, so that no tip is lost. */
    private static final double DOT_ALONG = 1;

    private static final double DOT_UP = 0.5;

    private static final double NAME_GAP = 15;
    private static final int MOST_TICKS = 5;
    private static final double PX_A_TICK = 17;
    private static final Stroke HAIR = Stroke.of(Ink.RULE2, 0.6);

    private final ChartPanels panels;
    private final ChartPlan plan;
    private final Scale rpm;
    private final double right;
    private final Pen pen = new Pen();

    /**
     * @param findings the pulls
     * @param setups for their names
     * @param chosen id of the setup drawn in blue; empty on paper
     * @param ribbonPercent half width of the range in which 90 of 100 pulls of an unchanged engine lie, percent
     * @param standard that corrected power is corrected to
     * @param figures the units of the axes
     */
    public record Content(
            DynoFindings findings,
            List<Setup> setups,
            Optional<String> chosen,
            OptionalDouble ribbonPercent,
            Standard standard,
            Figures figures) {
        public Content {
            setups = List.copyOf(setups);
        }
    }

    private PowerChart(ChartPanels panels, double width, double height) {
        this.panels = panels;
        this.plan = new ChartPlan(panels, width, height);
        this.rpm = plan.rpm();
        this.right = plan.right();
    }

    /** Returns the picture of every speed; without pulls the axes are dashed and say what will stand there. */
    public static Drawing of(Content content, double width, double height) {
        return of(ChartPanels.of(content, ChartLook.whole()), width, height);
    }

    /** Returns the picture of panels computed before. */
    public static Drawing of(ChartPanels panels, double width, double height) {
        return panels.isEmpty()
                ? EmptyChart.of(width, height, powerWords(panels.content()), torqueWords(panels.content()))
                : new PowerChart(panels, width, height).draw();
    }

    static String powerWords(Content content) {
        return "Power at the wheels, " + content.figures().unit(Shown.POWER).symbol();
    }

    static String torqueWords(Content content) {
        return "Torque at the wheels, " + content.figures().unit(Shown.TORQUE).symbol();
    }

    private Drawing draw() {
        head();
        for (double speed : speeds().values()) {
            pen.line(rpm.of(speed), plan.top(), rpm.of(speed), plan.bottom(), Stroke.of(Ink.GRID, 1));
        }
        List<Frame> frames = plan.frames();
        for (int i = 0; i < frames.size(); i++) {
            boolean last = i == frames.size() - 1;
            panel(panels.panels().get(i), frames.get(i), last ? 0 : ChartPlan.GAP - NAME_GAP);
        }
        speedAxis();
        band();
        return pen.picture(plan.width(), plan.height(), "Power, torque and difference from base over engine speed");
    }

    /** As many round figures as the height has room for. */
    static Ticks ticks(Panel panel, Frame frame) {
        int fitting = (int) Math.max(2, Math.min(MOST_TICKS, (frame.bottom() - frame.top()) / PX_A_TICK));
        return panel.ticks(fitting);
    }

    private void head() {
        double y = ChartPlan.HEAD_LINE - 3;
        Lettering as = Lettering.STRONG;
        for (String line : panels.look().head()) {
            pen.text(line, 0, y, Anchor.START, as);
            y += ChartPlan.HEAD_LINE;
            as = Lettering.SECOND;
        }
    }

    private void panel(Panel panel, Frame frame, double belowForNames) {
        Ticks ticks = ticks(panel, frame);
        Scale y = frame.scale(ticks);
        panel.ribbon().ifPresent(half -> ribbon(panel, y, half));
        ground(panel, frame, ticks, y);
        panel.pulls().forEach(pull -> pen.path(points(pull, y), HAIR));
        List<LineEnd> ends = new ArrayList<>();
        panel.lines().forEach(line -> ends.addAll(line(line, y)));
        LineEnd.write(
                pen, ends, right, plan.width() - right - 20, NAME_GAP, frame.top(), frame.bottom() + belowForNames);
    }

    /** As wide as base repeats itself, as far as base goes. */
    private void ribbon(Panel panel, Scale y, double half) {
        panel.lines().stream().limit(1).filter(base -> !base.values().isEmpty()).forEach(base -> ribbon(base, y, half));
    }

    private void ribbon(SetupLine base, Scale y, double half) {
        double from = rpm.of(base.values().firstKey());
        double to = rpm.of(base.values().lastKey());
        Stroke edge = Stroke.dashed(Ink.RULE2, 0.7, 2.0, 2.0);
        pen.block(from, y.of(half), to - from, y.of(-half) - y.of(half), Ink.WELL);
        pen.line(from, y.of(half), to, y.of(half), edge).line(from, y.of(-half), to, y.of(-half), edge);
    }

    private void ground(Panel panel, Frame frame, Ticks ticks, Scale y) {
        for (double value : ticks.values()) {
            String words =
                    panel.signed() ? Figures.signed(value, ticks.decimals()) : Figures.number(value, ticks.decimals());
            pen.line(ChartPlan.LEFT, y.of(value), right, y.of(value), Stroke.of(Ink.GRID, 1));
            pen.text(words, ChartPlan.LEFT - 6, y.of(value) + 4, Anchor.END, Lettering.FAINT);
        }
        Lettering strong = Lettering.STRONG.onHalo();
        pen.text(panel.title(), ChartPlan.LEFT, frame.top() - 6, Anchor.START, strong);
        double from = ChartPlan.LEFT + strong.widthOf(panel.title()) + 8;
        if (!panel.detail().isEmpty() && from + Lettering.PLAIN.widthOf(panel.detail()) <= right) {
            pen.text(panel.detail(), from, frame.top() - 6, Anchor.START, Lettering.PLAIN.onHalo());
        }
    }

    /** Its points as far as they can be told apart: one that lies within a dot of the one before it costs a stroke and shows nothing. */
    private List<Point> points(PullLine pull, Scale y) {
        List<Point> points = new ArrayList<>(pull.size());
        for (int i = 0; i < pull.size(); i++) {
            Point next = new Point(rpm.of(pull.rpm(i)), y.of(pull.value(i)));
            if (points.isEmpty() || i == pull.size() - 1 || apart(points.get(points.size() - 1), next)) {
                points.add(next);
            }
        }
        return points;
    }

    private static boolean apart(Point one, Point next) {
        return Math.abs(next.x() - one.x()) >= DOT_ALONG || Math.abs(next.y() - one.y()) >= DOT_UP;
    }

    private List<LineEnd> line(SetupLine line, Scale y) {
        List<Point> points = line.values().entrySet().stream()
                .map(at -> new Point(rpm.of(at.getKey()), y.of(at.getValue())))
                .toList();
        if (points.isEmpty()) {
            return List.of();
        }
        boolean chosen = panels.chosen(line.setup());
        pen.path(points, LineStyle.of(line.order(), chosen));
        return List.of(new LineEnd(line.name(), points.get(points.size() - 1), chosen, line.order() == 0));
    }

    private Ticks speeds() {
        return Ticks.inside(rpm.from(), rpm.to(), MOST_TICKS);
    }

    private void speedAxis() {
        double y = plan.bottom();
        Stroke ink = Stroke.of(Ink.INK, 1);
        pen.line(ChartPlan.LEFT, y, right, y, ink);
        for (double speed : speeds().values()) {
            pen.line(rpm.of(speed), y, rpm.of(speed), y + 5, ink);
            pen.text(Figures.number(speed, 0), rpm.of(speed), y + 18, Anchor.MIDDLE, Lettering.FAINT);
        }
        pen.text("rpm", right + 17, y + 18, Anchor.START, Lettering.FAINT);
    }

    /** The band that power is averaged over, as a dimension line under the axis, where it is in sight. */
    private void band() {
        DynoFindings findings = panels.content().findings();
        if (findings.bandFrom().isEmpty() || findings.bandTo().isEmpty()) {
            return;
        }
        int from = findings.bandFrom().getAsInt();
        int to = findings.bandTo().getAsInt();
        if (to <= rpm.from() || from >= rpm.to()) {
            return;
        }
        String words = "band power, " + Figures.number(from, 0) + " to " + Figures.number(to, 0)
                + (findings.bandIsDefault() ? ", covered by all" : "");
        DimensionLine.write(pen, rpm.within(from), rpm.within(to), plan.height() - 10, words, right);
    }
}
