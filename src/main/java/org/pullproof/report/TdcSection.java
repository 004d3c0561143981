package org.pullproof.report;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.drawing.CycleStrip;
import org.pullproof.drawing.TdcGuide;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Rotor;
import org.pullproof.engine.TdcTable;
import org.pullproof.engine.TopSigns;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.units.Figures;

/** Where each cylinder stands at top dead centre on compression: what a leak-down test needs. */
record TdcSection(EngineProfile profile) {
    private static final double DIALS = 250;
    private static final double STRIP = 66;

    Section section() {
        int first = profile.firing().cylinders().get(0);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Picture(TdcGuide.of(profile, first, Paper.CONTENT_WIDTH, DIALS)));
        blocks.add(new Block.Picture(CycleStrip.of(profile, first, Paper.CONTENT_WIDTH, STRIP)));
        blocks.add(table());
        blocks.add(new Block.Points("signs", "Compression or exhaust", TopSigns.of(profile, first), false));
        return new Section(
                "topDeadCentre",
                "Top dead centre of each cylinder",
                "degrees of crank after top dead centre of cylinder " + first + " on compression",
                blocks);
    }

    private Block table() {
        return new Block.Table(
                "tdc",
                "In firing order",
                List.of(
                        Block.Column.figures("number", "Cylinder"),
                        Block.Column.figures("turnDegrees", "Turn from the last one"),
                        Block.Column.figures("damperDegrees", "Damper past its first mark"),
                        Block.Column.figures(
                                "rotorDegrees",
                                "Rotor from post "
                                        + profile.firing().cylinders().get(0))),
                TdcTable.of(profile).rows().stream().map(this::row).toList());
    }

    private List<Cell> row(TdcTable.Row row) {
        TdcTable table = TdcTable.of(profile);
        int turn = table.turnFrom(table.before(row.number())).crankDegrees();
        return List.of(
                Cell.figure(String.valueOf(row.number()), row.number()),
                row.crankDegrees() == 0 ? Cell.words("start") : degrees(turn),
                degrees(row.damperDegrees()),
                profile.rotor() == Rotor.NONE
                        ? Cell.notRecorded()
                        : degrees(row.rotorDegrees().orElseThrow()));
    }

    private static Cell degrees(double angle) {
        return Cell.figure(Figures.number(angle, angle == Math.rint(angle) ? 0 : 1) + "°", angle);
    }
}
