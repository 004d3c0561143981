package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.tuneup.BaseSettings;
import org.pullproof.tuneup.CurvePoint;
import org.pullproof.tuneup.Setting;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;

/**
 * The timing as it stacks up over engine speed: base timing, mechanical advance on it, and what the vacuum canister adds at part load
 * as a broken line apart. The total at full throttle is a point. What was not told is not drawn.
 */
public final class TimingStack {
    private static final double LEFT = 34;
    private static final double RIGHT = 16;
    private static final double TOP = 22;
    private static final double BOTTOM = 26;
    private static final int MOST_TICKS = 5;
    private static final Stroke MEASURED = Stroke.of(Ink.INK, 1.5);
    private static final Stroke APART = Stroke.dashed(Ink.INK2, 1.2, 4.0, 3.0);

    private final BaseSettings settings;
    private final double base;
    private final Pen pen = new Pen();
    private final double width;
    private final double height;
    private final Scale rpm;
    private final Ticks speeds;
    private final Scale degrees;
    private final Ticks angles;

    private TimingStack(BaseSettings settings, double base, double width, double height) {
        this.settings = settings;
        this.base = base;
        this.width = width;
        this.height = height;
        this.speeds = Ticks.covering(0, highestSpeed(settings), MOST_TICKS);
        this.angles = Ticks.covering(Math.min(0, base), highestAngle(settings, base), MOST_TICKS);
        this.rpm = new Scale(speeds.low(), speeds.high(), LEFT, width - RIGHT);
        this.degrees = new Scale(angles.low(), angles.high(), height - BOTTOM, TOP);
    }

    /** The picture; empty as long as the base timing is not told, or nothing stands on it. */
    public static Optional<Drawing> of(BaseSettings settings, double width, double height) {
        boolean stacked = !settings.curve().isEmpty()
                || (settings.totalDegrees().isPresent()
                        && settings.of(Setting.PULL_RPM).isPresent());
        return settings.of(Setting.BASE_TIMING)
                .filter(base -> stacked)
                .map(base -> new TimingStack(settings, base.si(), width, height).draw());
    }

    private static double highestSpeed(BaseSettings settings) {
        return Stream.concat(
                        settings.curve().stream().map(point -> point.speed().si()),
                        settings.of(Setting.PULL_RPM).map(Quantity::si).stream())
                .mapToDouble(speed -> speed)
                .max()
                .orElse(1);
    }

    private static double highestAngle(BaseSettings settings, double base) {
        double curve = settings.curve().stream()
                .mapToDouble(point -> base + point.advance().si())
                .max()
                .orElse(base);
        double vacuum = canister(settings).orElse(0);
        return DoubleStream.of(base, curve + vacuum, settings.totalDegrees().orElse(base), 1)
                .max()
                .orElse(1);
    }

    private static OptionalDouble canister(BaseSettings settings) {
        return settings.of(Setting.CANISTER_ADVANCE).stream()
                .mapToDouble(Quantity::si)
                .findFirst();
    }

    private Drawing draw() {
        axes();
        pen.line(rpm.of(speeds.low()), degrees.of(base), rpm.of(speeds.high()), degrees.of(base), MEASURED);
        pen.text("base " + words(base), LEFT + 6, degrees.of(base) + 14, Anchor.START, Lettering.PLAIN.onHalo());
        mechanical();
        total();
        return pen.picture(width, height, title());
    }

    private String title() {
        return "Timing over engine speed, degrees: base " + words(base)
                + settings.totalDegrees().stream()
                        .mapToObj(total -> ", total " + words(total) + " at full throttle")
                        .findFirst()
                        .orElse("");
    }

    private void axes() {
        pen.text("degrees before top dead centre", 0, 11, Anchor.START, Lettering.FAINT);
        for (double angle : angles.values()) {
            pen.line(LEFT, degrees.of(angle), width - RIGHT, degrees.of(angle), Stroke.of(Ink.GRID, 1));
            pen.text(words(angle), LEFT - 6, degrees.of(angle) + 4, Anchor.END, Lettering.FAINT);
        }
        double ground = height - BOTTOM;
        pen.line(LEFT, ground, width - RIGHT, ground, Stroke.of(Ink.INK, 1));
        for (double speed : speeds.values()) {
            pen.line(rpm.of(speed), ground, rpm.of(speed), ground + 4, Stroke.of(Ink.INK, 1));
            String unit = speed == speeds.high() ? Figures.NO_BREAK_SPACE + "rpm" : "";
            Anchor anchor = speed == speeds.high() ? Anchor.END : Anchor.MIDDLE;
            double at = speed == speeds.high() ? width - 2 : rpm.of(speed);
            pen.text(Figures.number(speed, 0) + unit, at, ground + 17, anchor, Lettering.FAINT);
        }
    }

    private void mechanical() {
        if (settings.curve().isEmpty()) {
            return;
        }
        pen.path(curve(0), MEASURED);
        settings.curve()
                .forEach(point -> pen.disc(
                        rpm.of(point.speed().si()),
                        degrees.of(base + point.advance().si()),
                        2.5,
                        Ink.INK));
        canister(settings).ifPresent(added -> {
            pen.path(curve(added), APART);
            pen.text(
                    "+ vacuum " + words(added) + ", part load only",
                    width - RIGHT,
                    Math.max(TOP + 2, degrees.of(highestAngle(settings, base)) - 5),
                    Anchor.END,
                    Lettering.SECOND.onHalo());
        });
    }

    private List<Point> curve(double added) {
        List<Point> points = new ArrayList<>();
        for (CurvePoint point : settings.curve()) {
            points.add(new Point(
                    rpm.of(point.speed().si()),
                    degrees.of(base + point.advance().si() + added)));
        }
        return points;
    }

    private void total() {
        settings.totalDegrees()
                .ifPresent(total -> settings.of(Setting.PULL_RPM).ifPresent(at -> {
                    double x = rpm.of(at.si());
                    double y = degrees.of(total);
                    pen.line(x, degrees.of(base), x, y, Stroke.of(Ink.BLUE, 1));
                    pen.disc(x, y, 4, Ink.BLUE);
                    pen.text(
                            "total " + words(total),
                            x - 8,
                            y + 14,
                            Anchor.END,
                            Lettering.STRONG.in(Ink.BLUE).onHalo());
                }));
    }

    private static String words(double angle) {
        return Figures.number(angle, angle == Math.rint(angle) ? 0 : 1) + "°";
    }
}
