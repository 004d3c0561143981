package org.pullproof.drawing;

import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.FiringOrder;
import org.pullproof.engine.TdcTable;

/** One cycle of 720° with the true intervals between the cylinders; the next turn is thick. */
public final class CycleStrip {
    private static final double SIDE = 20;
    private static final double LINE = 30;
    private static final Stroke INK = Stroke.of(Ink.INK, 1.2);
    private static final Lettering NUMBER = Lettering.narrow(19, 400, Ink.INK);

    private final TdcTable table;
    private final TdcTable.Turn turn;
    private final Scale scale;
    private final Pen pen = new Pen();

    private CycleStrip(EngineProfile profile, int now, double width) {
        this.table = TdcTable.of(profile);
        this.turn = table.turnFrom(now);
        this.scale = new Scale(0, FiringOrder.CYCLE, SIDE, width - SIDE);
    }

    /**
     * @param now the cylinder that stands at top dead centre
     */
    public static Drawing of(EngineProfile profile, int now, double width, double height) {
        CycleStrip strip = new CycleStrip(profile, now, width);
        strip.draw();
        return strip.pen.picture(width, height, FiringStrip.words(profile.firing()));
    }

    private void draw() {
        pen.line(scale.of(0), LINE, scale.of(FiringOrder.CYCLE), LINE, INK);
        int from = table.row(turn.from()).crankDegrees();
        pen.line(scale.of(from), LINE, scale.of(from + turn.crankDegrees()), LINE, Stroke.of(Ink.BLUE, 3));
        for (TdcTable.Row row : table.rows()) {
            tick(row.number(), row.crankDegrees(), row.number() == turn.from());
            interval(table.turnFrom(row.number()), row.crankDegrees());
        }
        tick(table.rows().get(0).number(), FiringOrder.CYCLE, false);
    }

    private void tick(int cylinder, int angle, boolean now) {
        double x = scale.of(angle);
        pen.line(x, LINE - 8, x, LINE + 8, now ? Stroke.of(Ink.BLUE, 2.4) : INK);
        Lettering number = Lettering.narrow(
                NUMBER.size(), now || cylinder == turn.to() ? 600 : NUMBER.weight(), now ? Ink.BLUE : NUMBER.ink());
        pen.text(String.valueOf(cylinder), x, LINE - 14, Anchor.MIDDLE, number);
        pen.text(angle + "°", x, LINE + 27, Anchor.MIDDLE, Lettering.FAINT);
    }

    private void interval(TdcTable.Turn between, int angle) {
        boolean now = between.from() == turn.from();
        double middle = scale.of(angle + between.crankDegrees() / 2.0);
        pen.text(
                between.crankDegrees() + "°",
                middle,
                LINE + 16,
                Anchor.MIDDLE,
                now ? Lettering.STRONG.in(Ink.BLUE) : Lettering.FAINT);
    }
}
