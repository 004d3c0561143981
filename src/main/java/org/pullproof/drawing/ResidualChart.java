package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.ChangeLedger.Residual;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;

/** What the setups do not explain, pull by pull in order: pulls of base filled, the fitted drift as a blue line. */
public final class ResidualChart {
    private static final double LEFT = 38;
    private static final double RIGHT = 10;
    private static final double TOP = 24;
    private static final double BOTTOM = 26;
    private static final int MOST_TICKS = 5;
    private static final double RING = 6;

    private final List<Residual> residuals;
    private final List<Setup> setups;
    private final Set<String> flagged;
    private final double driftPercent;
    private final double width;
    private final double height;
    private final Scale x;
    private final Scale y;
    private final Ticks ticks;
    private final Pen pen = new Pen();

    private ResidualChart(ChangeLedger ledger, List<Setup> setups, double width, double height) {
        this.residuals = ledger.residuals();
        this.setups = List.copyOf(setups);
        this.flagged = ledger.flags().keySet();
        this.driftPercent = ledger.driftPercentPerPull().orElse(0);
        this.width = width;
        this.height = height;
        this.ticks = Ticks.covering(
                values(residuals).min().orElse(-1), values(residuals).max().orElse(1), MOST_TICKS);
        this.x = new Scale(0, Math.max(1, residuals.size() - 1), LEFT + 8, width - RIGHT - 8);
        this.y = new Scale(ticks.low(), ticks.high(), height - BOTTOM, TOP);
    }

    private static DoubleStream values(List<Residual> residuals) {
        return residuals.stream().flatMapToDouble(pull -> DoubleStream.of(pull.percent(), pull.driftPercent(), 0));
    }

    /** Returns the picture; without pulls it says what will stand there. */
    public static Drawing of(ChangeLedger ledger, List<Setup> setups, double width, double height) {
        return new ResidualChart(ledger, setups, width, height).draw();
    }

    private Drawing draw() {
        if (residuals.isEmpty()) {
            return empty();
        }
        ground();
        runs();
        drift();
        String base = residuals.get(0).setup();
        for (int i = 0; i < residuals.size(); i++) {
            dot(i, residuals.get(i).setup().equals(base));
        }
        pen.text("first pull", LEFT, height - 6, Anchor.START, Lettering.FAINT);
        pen.text("last, pull " + residuals.size(), width - RIGHT, height - 6, Anchor.END, Lettering.FAINT);
        return pen.picture(width, height, "What the setups do not explain, percent, by order of the pulls");
    }

    private Drawing empty() {
        pen.polyline(
                Stroke.dashed(Ink.RULE, 1, 5.0, 4.0), LEFT, TOP, LEFT, height - BOTTOM, width - RIGHT, height - BOTTOM);
        pen.text("a dot for each pull, in order", width / 2, height / 2, Anchor.MIDDLE, Lettering.FAINT);
        return pen.picture(width, height, "No pulls yet");
    }

    private void ground() {
        for (double value : ticks.values()) {
            Stroke line = value == 0 ? Stroke.of(Ink.INK, 0.8) : Stroke.of(Ink.GRID, 1);
            pen.line(LEFT, y.of(value), width - RIGHT, y.of(value), line);
            String words = Figures.signed(value, ticks.decimals());
            pen.text(words, LEFT - 6, y.of(value) + 4, Anchor.END, Lettering.FAINT);
        }
    }

    /** Names each unbroken run of pulls on one setup, where its name has room. */
    private void runs() {
        double free = 0;
        int start = 0;
        for (int i = 1; i <= residuals.size(); i++) {
            boolean ends = i == residuals.size()
                    || !residuals.get(i).setup().equals(residuals.get(start).setup());
            if (ends) {
                free = run(start, i - 1, free);
                start = i;
            }
        }
    }

    private double run(int first, int last, double free) {
        if (last < residuals.size() - 1) {
            double edge = (x.of(last) + x.of(last + 1)) / 2;
            pen.line(edge, TOP - 2, edge, height - BOTTOM, Stroke.of(Ink.RULE, 1));
        }
        boolean base = residuals.get(first).setup().equals(residuals.get(0).setup());
        Lettering as = base ? Lettering.PLAIN : Lettering.FAINT;
        String name = name(residuals.get(first).setup());
        double half = as.widthOf(name) / 2;
        double middle = Math.min(width - half - 2, Math.max(half + 2, (x.of(first) + x.of(last)) / 2));
        if (middle - half < free) {
            return free;
        }
        pen.text(name, middle, TOP - 8, Anchor.MIDDLE, as);
        return middle + half + 6;
    }

    private String name(String id) {
        return setups.stream()
                .filter(setup -> setup.id().equals(id))
                .map(Setup::name)
                .findFirst()
                .orElse(id);
    }

    private void drift() {
        List<Point> line = new ArrayList<>();
        for (int i = 0; i < residuals.size(); i++) {
            line.add(new Point(x.of(i), y.of(residuals.get(i).driftPercent())));
        }
        pen.path(line, Stroke.of(Ink.BLUE, 1.6));
        String words = "drift " + Figures.signedPercent(driftPercent, 2) + " a pull";
        Lettering as = Lettering.STRONG.in(Ink.BLUE).onHalo();
        double from = width - RIGHT - as.widthOf(words) - 12;
        boolean lineIsHigh = line.stream().anyMatch(point -> point.x() > from && point.y() < TOP + 24);
        pen.text(words, width - RIGHT - 2, lineIsHigh ? height - BOTTOM - 6 : TOP + 14, Anchor.END, as);
    }

    private void dot(int i, boolean base) {
        double cx = x.of(i);
        double cy = y.of(residuals.get(i).percent());
        if (base) {
            pen.disc(cx, cy, 3.2, Ink.INK);
        } else {
            pen.ring(cx, cy, 3.2, Stroke.of(Ink.INK, 1.2), Ink.SHEET);
        }
        if (flagged.contains(residuals.get(i).pull())) {
            flag(i, cx, cy);
        }
    }

    /** A red ring around a pull that the others speak against, with its name. */
    private void flag(int i, double cx, double cy) {
        pen.circle(cx, cy, RING, Stroke.of(Ink.RED, 1.4));
        Lettering as = Lettering.FAINT.in(Ink.RED).onHalo();
        boolean room = cx + RING + 4 + as.widthOf(residuals.get(i).pull()) < width - RIGHT;
        pen.text(
                residuals.get(i).pull(),
                room ? cx + RING + 4 : cx - RING - 4,
                cy + 4,
                room ? Anchor.START : Anchor.END,
                as);
    }
}
