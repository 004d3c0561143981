package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.SetupCurves.Mean;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import org.pullproof.weather.Standard;

/**
 * Power, torque and difference from base over engine speed, one panel below the other. Lines tell setups, names stand at their
 * ends, the hairlines are the pulls. Where a speed was not covered there is no line.
 */
public final class PowerChart {
    private static final double LEFT = 44;
    private static final double TOP = 16;
    private static final double BOTTOM = 42;
    private static final double GAP = 24;
    private static final double NAME_GAP = 15;
    private static final int MOST_TICKS = 5;
    private static final int MOST_NAMED = 7;
    private static final int MOST_HAIRLINES = 30;
    private static final double RAD_PER_RPM = Math.PI / 30;
    private static final Stroke HAIR = Stroke.of(Ink.RULE2, 0.6);

    private final Content content;
    private final SetupCurves curves;
    private final double width;
    private final double height;
    private final double right;
    private final Scale rpm;
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

    private PowerChart(Content content, double width, double height) {
        this.content = content;
        this.curves = SetupCurves.of(content.findings(), content.setups());
        this.width = width;
        this.height = height;
        this.right = width - nameWidth();
        this.rpm = new Scale(curves.fromRpm(), Math.max(curves.toRpm(), curves.fromRpm() + 1), LEFT, right);
    }

    /** Returns the picture; without pulls the axes are dashed and say what will stand there. */
    public static Drawing of(Content content, double width, double height) {
        PowerChart chart = new PowerChart(content, width, height);
        return chart.curves.isEmpty()
                ? EmptyChart.of(width, height, chart.powerWords(), chart.torqueWords())
                : chart.draw();
    }

    private double nameWidth() {
        double longest = curves.setups().stream()
                .mapToDouble(mean -> Lettering.STRONG.widthOf(mean.name()))
                .max()
                .orElse(0);
        return Math.max(60, Math.min(width * 0.25, longest + 22));
    }

    private Drawing draw() {
        List<Frame> frames = Frame.stacked(TOP, height - BOTTOM, GAP);
        for (double speed : speeds().values()) {
            pen.line(rpm.of(speed), TOP, rpm.of(speed), height - BOTTOM, Stroke.of(Ink.GRID, 1));
        }
        panel(frames.get(0), Shown.POWER, powerWords(), standardWords(), (speed, watt) -> watt);
        panel(frames.get(1), Shown.TORQUE, torqueWords(), "", (speed, watt) -> watt / (speed * RAD_PER_RPM));
        difference(frames.get(2));
        speedAxis();
        band();
        return pen.picture(width, height, "Power, torque and difference from base over engine speed");
    }

    /** What a panel shows of a point of a power curve. */
    private interface Value {
        double of(double rpm, double watt);
    }

    private String powerWords() {
        return "Power at the wheels, " + content.figures().unit(Shown.POWER).symbol();
    }

    private String torqueWords() {
        return "Torque at the wheels, " + content.figures().unit(Shown.TORQUE).symbol();
    }

    private String standardWords() {
        String standard = curves.corrected() ? content.standard().words() : "not corrected";
        return standard + " · smoothed over " + PowerCurve.SMOOTHING + " rpm";
    }

    private void panel(Frame frame, Shown shown, String title, String detail, Value value) {
        Value inUnit = (speed, watt) -> content.figures().unit(shown).fromSi(value.of(speed, watt));
        Ticks ticks =
                Ticks.covering(all(inUnit).min().orElse(0), all(inUnit).max().orElse(1), MOST_TICKS);
        Scale y = frame.scale(ticks);
        ground(frame, ticks, y, title, detail, false);
        hairlines(y, inUnit);
        List<LineEnd> ends = new ArrayList<>();
        for (Mean mean : drawn()) {
            ends.addAll(line(mean, points(mean.mean(), y, inUnit)));
        }
        names(ends, frame, frame.bottom() + GAP - NAME_GAP);
    }

    private void difference(Frame frame) {
        Mean base = curves.base().orElseThrow();
        double ribbon = content.ribbonPercent().orElse(0);
        DoubleStream differences = drawn().stream()
                .flatMap(mean -> over(base, mean).values().stream())
                .mapToDouble(Double::doubleValue);
        double[] ends = DoubleStream.concat(differences, DoubleStream.of(-ribbon, ribbon, -0.5, 0.5))
                .toArray();
        Ticks ticks = Ticks.covering(
                DoubleStream.of(ends).min().orElse(-1),
                DoubleStream.of(ends).max().orElse(1),
                MOST_TICKS);
        Scale y = frame.scale(ticks);
        String detail = content.ribbonPercent().isPresent() ? "ribbon: repeatability of one pull, 90 %" : "";
        if (!base.mean().isEmpty() && content.ribbonPercent().isPresent()) {
            ribbon(base, y, ribbon);
        }
        ground(frame, ticks, y, "Difference from " + base.name() + ", %", detail, true);
        List<LineEnd> named = new ArrayList<>();
        for (Mean mean : drawn()) {
            named.addAll(line(mean, points(over(base, mean), y, (speed, percent) -> percent)));
        }
        names(named, frame, frame.bottom());
    }

    private static SortedMap<Integer, Double> over(Mean base, Mean mean) {
        SortedMap<Integer, Double> percent = new TreeMap<>();
        mean.mean().forEach((speed, watt) -> {
            Double before = base.mean().get(speed);
            if (before != null && before > 0) {
                percent.put(speed, 100 * (watt / before - 1));
            }
        });
        return percent;
    }

    private void ribbon(Mean base, Scale y, double half) {
        double from = rpm.of(base.mean().firstKey());
        double to = rpm.of(base.mean().lastKey());
        Stroke edge = Stroke.dashed(Ink.RULE2, 0.7, 2.0, 2.0);
        pen.block(from, y.of(half), to - from, y.of(-half) - y.of(half), Ink.WELL);
        pen.line(from, y.of(half), to, y.of(half), edge).line(from, y.of(-half), to, y.of(-half), edge);
    }

    private void ground(Frame frame, Ticks ticks, Scale y, String title, String detail, boolean signed) {
        for (double value : ticks.values()) {
            String words = signed ? Figures.signed(value, ticks.decimals()) : Figures.number(value, ticks.decimals());
            pen.line(LEFT, y.of(value), right, y.of(value), Stroke.of(Ink.GRID, 1));
            pen.text(words, LEFT - 6, y.of(value) + 4, Anchor.END, Lettering.FAINT);
        }
        Lettering strong = Lettering.STRONG.onHalo();
        pen.text(title, LEFT, frame.top() - 6, Anchor.START, strong);
        double from = LEFT + strong.widthOf(title) + 8;
        if (!detail.isEmpty() && from + Lettering.PLAIN.widthOf(detail) <= right) {
            pen.text(detail, from, frame.top() - 6, Anchor.START, Lettering.PLAIN.onHalo());
        }
    }

    /** Base and the latest setups get a line of their own, the others only hairlines. */
    private List<Mean> drawn() {
        List<Mean> all = curves.setups();
        if (all.size() <= MOST_NAMED) {
            return all;
        }
        return Stream.concat(all.stream().limit(1), all.subList(all.size() - MOST_NAMED + 1, all.size()).stream())
                .toList();
    }

    private void hairlines(Scale y, Value value) {
        boolean all = content.findings().pulls().size() < MOST_HAIRLINES;
        for (Mean mean : curves.setups()) {
            if (all || chosen(mean)) {
                mean.pulls().forEach(pull -> pen.path(pullPoints(pull, y, value), HAIR));
            }
        }
    }

    private List<Point> pullPoints(SetupCurves.Curve pull, Scale y, Value value) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < pull.curve().size(); i++) {
            int speed = pull.curve().rpm(i);
            points.add(new Point(rpm.of(speed), y.of(value.of(speed, pull.watt(i)))));
        }
        return points;
    }

    private List<Point> points(SortedMap<Integer, Double> line, Scale y, Value value) {
        return line.entrySet().stream()
                .map(at -> new Point(rpm.of(at.getKey()), y.of(value.of(at.getKey(), at.getValue()))))
                .toList();
    }

    private DoubleStream all(Value value) {
        return curves.setups().stream()
                .flatMap(mean -> mean.pulls().stream())
                .flatMapToDouble(pull -> java.util.stream.IntStream.range(
                                0, pull.curve().size())
                        .mapToDouble(i -> value.of(pull.curve().rpm(i), pull.watt(i))));
    }

    private boolean chosen(Mean mean) {
        return content.chosen().filter(mean.setup()::equals).isPresent();
    }

    private List<LineEnd> line(Mean mean, List<Point> points) {
        if (points.isEmpty()) {
            return List.of();
        }
        pen.path(points, LineStyle.of(mean.order(), chosen(mean)));
        return List.of(new LineEnd(mean.name(), points.get(points.size() - 1), chosen(mean), mean.order() == 0));
    }

    private void names(List<LineEnd> ends, Frame frame, double lowest) {
        LineEnd.write(pen, ends, right, width - right - 20, NAME_GAP, frame.top(), lowest);
    }

    private Ticks speeds() {
        return Ticks.inside(rpm.from(), rpm.to(), MOST_TICKS);
    }

    private void speedAxis() {
        double y = height - BOTTOM;
        Stroke ink = Stroke.of(Ink.INK, 1);
        pen.line(LEFT, y, right, y, ink);
        for (double speed : speeds().values()) {
            pen.line(rpm.of(speed), y, rpm.of(speed), y + 5, ink);
            pen.text(Figures.number(speed, 0), rpm.of(speed), y + 18, Anchor.MIDDLE, Lettering.FAINT);
        }
        pen.text("rpm", right + 17, y + 18, Anchor.START, Lettering.FAINT);
    }

    /** The band that power is averaged over, as a dimension line under the axis. */
    private void band() {
        DynoFindings findings = content.findings();
        if (findings.bandFrom().isEmpty() || findings.bandTo().isEmpty()) {
            return;
        }
        int from = findings.bandFrom().getAsInt();
        int to = findings.bandTo().getAsInt();
        String words = "band power, " + Figures.number(from, 0) + " to " + Figures.number(to, 0)
                + (findings.bandIsDefault() ? ", covered by all" : "");
        DimensionLine.write(pen, rpm.within(from), rpm.within(to), height - 10, words, right);
    }
}
