package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Rotor;
import org.pullproof.engine.TdcTable;

/**
 * One cylinder at top dead centre on compression, and the turn to the next: the damper from the front under its fixed pointer, and
 * the cap from above with its posts at half the angles of the crank, where there is a distributor. The arrows are the next turn.
 */
public final class TdcGuide {
    private static final double DIAL = 330;
    private static final double HEIGHT = 330;
    private static final double MIDDLE = 164;
    /** Where post 1 is drawn: left of the front, no profile tells it. */
    private static final double FIRST_POST = -30;

    private static final Stroke OUTLINE = Stroke.of(Ink.INK, 1.6);
    private static final Stroke THIN = Stroke.of(Ink.INK2, 0.8);
    private static final Stroke CENTRE = Stroke.dashed(Ink.INK2, 0.8, 14.0, 3.0, 3.0, 3.0);
    private static final Stroke ARROW = Stroke.of(Ink.BLUE, 1.8);

    private final EngineProfile profile;
    private final TdcTable table;
    private final TdcTable.Turn turn;
    private final Pen pen = new Pen();

    private TdcGuide(EngineProfile profile, int now) {
        this.profile = profile;
        this.table = TdcTable.of(profile);
        this.turn = table.turnFrom(now);
    }

    /**
     * @param now the cylinder that stands at top dead centre
     */
    public static Drawing of(EngineProfile profile, int now, double width, double height) {
        return new TdcGuide(profile, now).draw(width, height);
    }

    private boolean distributor() {
        return profile.rotor() != Rotor.NONE;
    }

    private Drawing draw(double width, double height) {
        int dials = distributor() ? 2 : 1;
        double scale = Math.min(width / (dials * DIAL), height / HEIGHT);
        double left = (width - dials * DIAL * scale) / 2;
        damper(new Dial(left + DIAL / 2 * scale, MIDDLE * scale, scale, true));
        if (distributor()) {
            cap(new Dial(left + 1.5 * DIAL * scale, MIDDLE * scale, scale, profile.rotor() == Rotor.CLOCKWISE));
        }
        return pen.picture(width, height, told());
    }

    private String told() {
        return "Cylinder " + turn.from() + " at top dead centre on compression; the next turn of the crank is "
                + turn.crankDegrees() + "° to cylinder " + turn.to()
                + (distributor() ? ", the rotor moves " + degrees(turn.rotorDegrees()) : "");
    }

    private static String degrees(double angle) {
        return angle == Math.rint(angle) ? (int) angle + "°" : angle + "°";
    }

    private void damper(Dial dial) {
        dial.circle(106, OUTLINE, Ink.SHEET);
        dial.circle(90, THIN, Ink.SHEET);
        dial.cross(122);
        dial.circle(19, Stroke.of(Ink.INK, 1.2), Ink.SHEET);
        dial.hexagon(12);
        dial.pointer();
        marks().forEach((angle, cylinders) -> mark(dial, angle, cylinders));
        turnOfCrank(dial);
        dial.caption("Damper from the front, turning clockwise");
    }

    /** Cylinders by the place of their mark, degrees of the crank past the mark of the first. */
    private Map<Integer, List<Integer>> marks() {
        return table.rows().stream()
                .collect(Collectors.groupingBy(
                        TdcTable.Row::damperDegrees,
                        TreeMap::new,
                        Collectors.mapping(TdcTable.Row::number, Collectors.toList())));
    }

    /** What has still to come to the pointer lies before it, against the direction of running. */
    private void mark(Dial dial, int damperDegrees, List<Integer> cylinders) {
        double angle = table.row(turn.from()).damperDegrees() - damperDegrees;
        boolean now = cylinders.contains(turn.from());
        boolean next = cylinders.contains(turn.to());
        dial.spoke(angle, 90, 106, now ? Stroke.of(Ink.BLUE, 3) : Stroke.of(Ink.INK, next ? 3 : 1.4));
        Lettering as = Lettering.narrow(19, now || next ? 600 : 400, now ? Ink.BLUE : Ink.INK)
                .onHalo();
        String numbers = cylinders.stream().map(String::valueOf).collect(Collectors.joining(" · "));
        dial.word(numbers, angle, cylinders.size() > 1 ? 66 : 73, as);
    }

    private void turnOfCrank(Dial dial) {
        double turned = Math.min(turn.crankDegrees(), 340);
        dial.arrow(-turned + 5, -16, 121);
        dial.word(turn.crankDegrees() + "°", -turned / 2 - 4, 143, Lettering.narrow(17, 600, Ink.BLUE));
    }

    private void cap(Dial dial) {
        dial.circle(112, OUTLINE, Ink.SHEET);
        dial.circle(72, THIN, Ink.SHEET);
        dial.cross(128);
        table.rows().forEach(row -> post(dial, row));
        double points = post(turn.from());
        dial.rotor(points);
        double moved = turn.rotorDegrees();
        dial.arrow(points + Math.min(9, moved / 4), points + moved - Math.min(6, moved / 6), 64);
        dial.word(degrees(moved), points + moved / 2 + 4, 46, Lettering.narrow(14, 600, Ink.BLUE));
        dial.caption("Cap from above, rotor turning "
                + (profile.rotor() == Rotor.CLOCKWISE ? "clockwise" : "counterclockwise"));
    }

    private double post(int cylinder) {
        return FIRST_POST + table.row(cylinder).rotorDegrees().orElseThrow();
    }

    private void post(Dial dial, TdcTable.Row row) {
        boolean now = row.number() == turn.from();
        boolean next = row.number() == turn.to();
        double angle = post(row.number());
        dial.post(angle, now ? Stroke.of(Ink.BLUE, 2.4) : Stroke.of(Ink.INK, 1.2), now ? Ink.BLUEWASH : Ink.SHEET);
        dial.word(String.valueOf(row.number()), angle, 92, Lettering.narrow(19, now || next ? 600 : 400, Ink.INK));
    }

    /** A round thing; angles in degrees from the top, positive the way it turns; radii before scaling. */
    private final class Dial {
        private static final double POST = 17;

        private final double x;
        private final double y;
        private final double scale;
        private final int sense;

        Dial(double x, double y, double scale, boolean clockwise) {
            this.x = x;
            this.y = y;
            this.scale = scale;
            this.sense = clockwise ? 1 : -1;
        }

        private Point at(double angle, double radius) {
            double turned = Math.toRadians(sense * angle);
            return new Point(x + scale * radius * Math.sin(turned), y - scale * radius * Math.cos(turned));
        }

        void circle(double radius, Stroke stroke, Ink fill) {
            pen.ring(x, y, radius * scale, stroke, fill);
        }

        void post(double angle, Stroke stroke, Ink fill) {
            Point middle = at(angle, 92);
            pen.ring(middle.x(), middle.y(), POST * scale, stroke, fill);
        }

        void cross(double reach) {
            double r = reach * scale;
            pen.line(x - r, y, x + r, y, CENTRE).line(x, y - 28 * scale, x, y + r, CENTRE);
        }

        void spoke(double angle, double from, double to, Stroke stroke) {
            Point inner = at(angle, from);
            Point outer = at(angle, to);
            pen.line(inner.x(), inner.y(), outer.x(), outer.y(), stroke);
        }

        void word(String words, double angle, double radius, Lettering as) {
            Point middle = at(angle, radius);
            Lettering sized = scaled(as);
            pen.text(words, middle.x(), middle.y() + 0.35 * sized.size(), Anchor.MIDDLE, sized);
        }

        private Lettering scaled(Lettering as) {
            return new Lettering(as.face(), Math.max(12, as.size() * scale), as.weight(), as.ink(), as.halo());
        }

        void caption(String words) {
            Lettering as = new Lettering(Typeface.TEXT, Math.max(12, 13 * scale), 400, Ink.INK, false);
            pen.text(words, x, y + (HEIGHT - MIDDLE - 8) * scale, Anchor.MIDDLE, as);
        }

        void hexagon(double radius) {
            List<Point> corners = new ArrayList<>();
            for (int corner = 0; corner <= 6; corner++) {
                corners.add(at(corner * 60, radius));
            }
            pen.path(corners, Stroke.of(Ink.INK, 1.2));
        }

        void pointer() {
            Point tip = at(0, 108);
            double up = 17 * scale;
            double half = 7 * scale;
            pen.filled(Ink.INK, tip.x(), tip.y(), tip.x() - half, tip.y() - up, tip.x() + half, tip.y() - up);
            pen.text("pointer", x, tip.y() - up - 6, Anchor.MIDDLE, scaled(Lettering.PLAIN));
        }

        void rotor(double angle) {
            List<Point> outline = new ArrayList<>();
            outline.add(at(angle, 74));
            for (int round = 70; round <= 290; round += 10) {
                outline.add(at(angle + round, 17));
            }
            pen.filled(outline, Ink.WELL);
            outline.add(outline.get(0));
            pen.path(outline, OUTLINE);
            circle(7, Stroke.of(Ink.INK, 1.2), Ink.SHEET);
        }

        /** An arc with its head at the end, in the sense of turning. */
        void arrow(double from, double to, double radius) {
            double head = Math.toDegrees(9 / radius);
            List<Point> arc = new ArrayList<>();
            int steps = (int) Math.max(2, Math.ceil((to - head - from) / 3));
            for (int i = 0; i <= steps; i++) {
                arc.add(at(from + (to - head - from) * i / steps, radius));
            }
            pen.path(arc, ARROW);
            pen.filled(List.of(at(to, radius), at(to - head, radius + 3.6), at(to - head, radius - 3.6)), Ink.BLUE);
        }
    }
}
