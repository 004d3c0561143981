package org.pullproof.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Layout;
import org.pullproof.engine.Rotor;
import org.pullproof.engine.TdcTable;

/**
 * The engine from above, front to the left: banks along the chain-dotted line of the crank, circles for upright and V banks,
 * barrels for flat ones, a red bracket over wires that must not run side by side.
 */
public final class EnginePlan {
    private static final double PITCH_MOST = 88;
    private static final double RADIUS_MOST = 27;
    private static final double LABELS = 28;
    /** Radius of the distributor's cap in radii of a cylinder, and where its numbers stand in it. */
    private static final double CAP = 1.4;

    private static final double NUMBERS = 0.7;

    /** Where post 1 is drawn, degrees from the top: left of the front, no profile tells it. */
    private static final double FIRST_POST = -30;

    private static final double LEFT = 34;
    private static final double RIGHT = 28;
    private static final Stroke OUTLINE = Stroke.of(Ink.INK, 1.2);
    private static final Stroke CENTRE = Stroke.of(Ink.RULE2, 0.7);
    private static final Stroke BRACKET = Stroke.of(Ink.RED, 1.4);

    /** How far the banks stand from the crank, in radii; the cap of the distributor stands between them where wires are drawn. */
    private static final double CLOSE = 2;

    private static final double WIDE = 3;

    private final EngineProfile profile;
    private final List<Pair> apart;
    private final Optional<Set<Integer>> wiresOff;
    private final double spread;
    private final Pen pen = new Pen();
    private final double width;
    private final double height;
    private final double crank;
    private final double pitch;
    private final double radius;

    /** Two cylinders that fire one after the other and stand side by side. */
    public record Pair(int first, int second) {}

    private EnginePlan(
            EngineProfile profile, List<Pair> apart, Optional<Set<Integer>> wiresOff, double width, double height) {
        this.profile = profile;
        this.apart = List.copyOf(apart);
        this.wiresOff = wiresOff;
        this.spread = wiresOff.isPresent() ? WIDE : CLOSE;
        this.width = width;
        this.height = height;
        this.pitch = pitch();
        this.radius = Math.min(RADIUS_MOST, 0.38 * pitch);
        boolean capBelow = wiresOff.isPresent() && profile.layout() == Layout.INLINE;
        this.crank = capBelow ? LABELS + 1.4 * radius : height / 2;
    }

    /**
     * @param profile the engine
     * @param apart pairs of cylinders whose wires are kept apart; a pair that does not stand side by side gets no bracket
     */
    public static Drawing of(EngineProfile profile, List<Pair> apart, double width, double height) {
        return new EnginePlan(profile, apart, Optional.empty(), width, height).draw();
    }

    /**
     * The same with the distributor's cap and a wire from each post straight to its plug; red where wires must run apart, broken
     * where one is off.
     *
     * @param profile an engine with a distributor
     * @param off cylinders whose wire is off
     */
    public static Drawing wired(
            EngineProfile profile, List<Pair> apart, Set<Integer> off, double width, double height) {
        return new EnginePlan(profile, apart, Optional.of(Set.copyOf(off)), width, height).draw();
    }

    /**
     * The banks as they lie on a picture with the front to the left, the upper one first: as listed, but a bank called left lies
     * below, as it does when one looks down on the engine.
     */
    public static List<Bank> fromTop(EngineProfile profile) {
        List<Bank> banks = profile.banks();
        boolean leftFirst = banks.size() == 2
                && banks.get(0).name().toLowerCase(Locale.ROOT).contains("left");
        return leftFirst ? List.of(banks.get(1), banks.get(0)) : banks;
    }

    /** How far a bank is moved from the middle, in pitches; forward is negative. */
    public static double stagger(EngineProfile profile, Bank bank) {
        boolean staggered = profile.banks().stream().anyMatch(Bank::leads);
        if (!staggered) {
            return 0;
        }
        return bank.leads() ? -1.0 / 6 : 1.0 / 6;
    }

    private double pitch() {
        int longest = profile.banks().stream()
                .mapToInt(bank -> bank.cylinders().size())
                .max()
                .orElse(1);
        double byWidth = (width - LEFT - RIGHT) / (longest + 1.0 / 3);
        double free = height - 2 * LABELS;
        double byHeight = switch (profile.layout()) {
            case INLINE -> free / (wiresOff.isPresent() ? 7 : 2.8) / 0.38;
            case V -> free / (2 * spread + 2.8) / 0.38;
            case FLAT -> (free - 10) / (wiresOff.isPresent() ? 3.14 : 2.44);
        };
        return Math.max(20, Math.min(PITCH_MOST, Math.min(byWidth, byHeight)));
    }

    private Drawing draw() {
        crankLine();
        List<Bank> banks = fromTop(profile);
        for (int i = 0; i < banks.size(); i++) {
            bank(banks.get(i), i == 0, banks.size() == 1);
        }
        wiresOff.ifPresent(this::wires);
        return pen.picture(width, height, title());
    }

    private String title() {
        return profile.name() + ", seen from above, front to the left. "
                + fromTop(profile).stream()
                        .map(bank -> named(bank) + ": " + numbers(bank))
                        .collect(Collectors.joining("; "));
    }

    private void crankLine() {
        pen.line(18, crank, width - 4, crank, Stroke.dashed(Ink.INK2, 0.8, 14.0, 3.0, 3.0, 3.0));
        frontArrow(pen, crank);
        pen.text("crank", width - 4, crank - 5, Anchor.END, Lettering.FAINT);
    }

    /** The arrow to the front of the engine, with its word. */
    static void frontArrow(Pen pen, double y) {
        Stroke thin = Stroke.of(Ink.INK, 1);
        pen.line(24, y, 2, y, thin).polyline(thin, 7, y - 4, 2, y, 7, y + 4);
        pen.text("front", 2, y - 8, Anchor.START, Lettering.FAINT);
    }

    private void bank(Bank bank, boolean upper, boolean only) {
        if (profile.layout() == Layout.FLAT) {
            barrels(bank, upper);
        } else {
            circles(bank, only ? crank : upper ? crank - spread * radius : crank + spread * radius, upper, only);
        }
    }

    private void circles(Bank bank, double y, boolean upper, boolean only) {
        double half = 1.4 * radius;
        pen.outlined(left(bank), y - half, length(bank), 2 * half, 2, OUTLINE, Ink.SHEET);
        for (int cylinder : bank.cylinders()) {
            circle(cylinder, x(bank, cylinder), y);
        }
        labels(bank, upper ? y - half : y + half, upper, only);
    }

    private void circle(int cylinder, double x, double y) {
        pen.ring(x, y, radius, Stroke.of(Ink.INK, 1.1), Ink.SHEET);
        double reach = 1.2 * radius;
        pen.line(x - reach, y, x + reach, y, CENTRE).line(x, y - reach, x, y + reach, CENTRE);
        pen.disc(x, y, 0.6 * radius, Ink.SHEET);
        number(cylinder, x, y);
    }

    private void number(int cylinder, double x, double y) {
        double size = radius > 25 ? 21 : radius > 19.5 ? 16 : 14.5;
        Lettering as = new Lettering(Typeface.NARROW, Math.min(size, 1.1 * radius), 500, Ink.INK, false);
        pen.text(String.valueOf(cylinder), x, y + 0.35 * as.size(), Anchor.MIDDLE, as);
    }

    private void barrels(Bank bank, boolean upper) {
        double away = upper ? -1 : 1;
        double near = crank + away * nearest();
        double head = near + away * 0.86 * pitch;
        double top = Math.min(near, head);
        double depth = Math.abs(head - near);
        pen.outlined(left(bank), top, length(bank), depth, 2, OUTLINE, Ink.SHEET);
        double outer = head + away * 5;
        pen.line(left(bank), outer, left(bank) + length(bank), outer, OUTLINE);
        for (int cylinder : bank.cylinders()) {
            barrel(cylinder, x(bank, cylinder), top, depth);
        }
        labels(bank, outer, upper, false);
    }

    private double nearest() {
        return (wiresOff.isPresent() ? 0.71 : 0.36) * pitch;
    }

    private void wires(Set<Integer> off) {
        Point cap = new Point((LEFT + width - RIGHT) / 2, capHeight());
        double round = CAP * radius;
        TdcTable table = TdcTable.of(profile);
        for (TdcTable.Row row : table.rows()) {
            double turned = turned(row);
            Ink ink = isApart(row.number()) ? Ink.RED : Ink.INK;
            Point plug = plug(row.number());
            double postX = cap.x() + round * Math.sin(turned);
            double postY = cap.y() - round * Math.cos(turned);
            pen.line(
                    postX,
                    postY,
                    plug.x(),
                    plug.y(),
                    off.contains(row.number()) ? Stroke.dashed(ink, 1.4, 4.0, 3.0) : Stroke.of(ink, 1.4));
        }
        pen.ring(cap.x(), cap.y(), round, OUTLINE, Ink.SHEET);
        table.rows().forEach(row -> post(row, cap, NUMBERS * round));
    }

    private void post(TdcTable.Row row, Point cap, double reach) {
        double turned = turned(row);
        pen.text(
                String.valueOf(row.number()),
                cap.x() + reach * Math.sin(turned),
                cap.y() - reach * Math.cos(turned) + 4,
                Anchor.MIDDLE,
                Lettering.narrow(11, 500, Ink.INK));
    }

    /** Angle of a post from the top, clockwise, radians. */
    private double turned(TdcTable.Row row) {
        int sense = profile.rotor() == Rotor.CLOCKWISE ? 1 : -1;
        return Math.toRadians(sense * (FIRST_POST + row.rotorDegrees().orElseThrow()));
    }

    private double capHeight() {
        return profile.layout() == Layout.INLINE ? crank + (1.4 + 1.4 + CAP) * radius : crank;
    }

    private boolean isApart(int cylinder) {
        return apart.stream().anyMatch(pair -> pair.first() == cylinder || pair.second() == cylinder);
    }

    /** Where a wire ends: the side of the bank that looks to the cap. */
    private Point plug(int cylinder) {
        Bank bank = profile.bankOf(cylinder);
        double away = fromTop(profile).indexOf(bank) == 0 ? -1 : 1;
        double side = switch (profile.layout()) {
            case INLINE -> crank + 1.4 * radius;
            case V -> crank + away * (spread - 1.4) * radius;
            case FLAT -> crank + away * nearest();
        };
        return new Point(x(bank, cylinder), side);
    }

    private void barrel(int cylinder, double x, double top, double depth) {
        double half = 0.276 * pitch;
        Stroke wall = Stroke.of(Ink.INK, 1.1);
        pen.line(x - half, top, x - half, top + depth, wall).line(x + half, top, x + half, top + depth, wall);
        pen.line(x, top - 9, x, top + depth + 9, CENTRE);
        pen.block(x - 10, top + depth / 2 - 10, 20, 20, Ink.SHEET);
        number(cylinder, x, top + depth / 2);
    }

    /** The name of a bank and the brackets over its wires, on the side away from the crank. */
    private void labels(Bank bank, double edge, boolean upper, boolean only) {
        double away = upper ? -1 : 1;
        List<Pair> here = apart.stream().filter(pair -> sideBySide(bank, pair)).toList();
        here.forEach(pair -> bracket(x(bank, pair.first()), x(bank, pair.second()), edge, away));
        double free = here.isEmpty() ? width : caution(bank, here, edge, away);
        if (!only) {
            name(bank, edge, away, free);
        }
    }

    /** Says what the brackets mean; returns where the room to the left of words and brackets ends. */
    private double caution(Bank bank, List<Pair> here, double edge, double away) {
        String words = told(here);
        double half = Lettering.PLAIN.widthOf(words) / 2;
        double from = here.stream().mapToDouble(pair -> least(bank, pair)).min().orElse(0);
        double to = here.stream().mapToDouble(pair -> least(bank, pair)).max().orElse(0) + pitch;
        double middle = Math.max(half + 2, Math.min(width - half - 2, (from + to) / 2));
        pen.text(words, middle, away < 0 ? edge - 15 : edge + 24, Anchor.MIDDLE, Lettering.PLAIN.in(Ink.RED));
        return Math.min(from, middle - half) - 8;
    }

    /** The name with its numbers at the front end, or the name alone behind the bank where brackets need the room. */
    private void name(Bank bank, double edge, double away, double free) {
        String full = named(bank) + ", " + numbers(bank);
        double rear = left(bank) + length(bank) + 4;
        if (left(bank) + Lettering.FAINT.widthOf(full) < free) {
            pen.text(full, left(bank), away < 0 ? edge - 6 : edge + 14, Anchor.START, Lettering.FAINT);
        } else if (rear + Lettering.FAINT.widthOf(named(bank)) < width) {
            pen.text(named(bank), rear, away < 0 ? edge + 12 : edge - 4, Anchor.START, Lettering.FAINT);
        }
    }

    private double least(Bank bank, Pair pair) {
        return Math.min(x(bank, pair.first()), x(bank, pair.second()));
    }

    private static String told(List<Pair> pairs) {
        return pairs.stream()
                        .map(pair -> pair.first() + " and " + pair.second())
                        .collect(Collectors.joining(", ")) + ": keep these wires apart";
    }

    private void bracket(double x1, double x2, double edge, double away) {
        double foot = edge + away * 3;
        double bar = edge + away * 10;
        pen.polyline(BRACKET, x1, foot, x1, bar, x2, bar, x2, foot);
    }

    private static boolean sideBySide(Bank bank, Pair pair) {
        int first = bank.cylinders().indexOf(pair.first());
        int second = bank.cylinders().indexOf(pair.second());
        return first >= 0 && second >= 0 && Math.abs(first - second) == 1;
    }

    private static String named(Bank bank) {
        return bank.name().toLowerCase(Locale.ROOT).contains("bank") ? bank.name() : "bank " + bank.name();
    }

    private static String numbers(Bank bank) {
        return bank.cylinders().stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private double length(Bank bank) {
        return bank.cylinders().size() * pitch;
    }

    private double left(Bank bank) {
        double middle = (LEFT + width - RIGHT) / 2;
        return middle - length(bank) / 2 + stagger(profile, bank) * pitch;
    }

    private double x(Bank bank, int cylinder) {
        return left(bank) + (bank.cylinders().indexOf(cylinder) + 0.5) * pitch;
    }
}
