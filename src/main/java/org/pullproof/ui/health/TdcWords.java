package org.pullproof.ui.health;

import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Rotor;
import org.pullproof.engine.TdcTable;
import org.pullproof.health.leakdown.CrankPush;
import org.pullproof.health.leakdown.LeakTester;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;

/** Sentences on turning the crank to the next top dead centre. */
final class TdcWords {
    private static final double OFF = 10;

    private TdcWords() {}

    /** Where it stands and what the next turn is. */
    static Sentence turn(EngineProfile engine, int now) {
        TdcTable.Turn turn = TdcTable.of(engine).turnFrom(now);
        String how = engine.rotor() == Rotor.NONE
                ? "; the whistle in plug hole " + turn.to() + " sounds on the way."
                : "; the rotor moves " + degrees(turn.rotorDegrees()) + ".";
        return new Sentence("Cylinder **" + now + "** is at TDC. For **" + turn.to() + "**, turn the crank **"
                + turn.crankDegrees() + "°** clockwise" + how);
    }

    /** What to do before air goes into a cylinder, with the torque on the crank if it stands 10° off. */
    static Sentence before(EngineProfile engine, int cylinder, Figures figures) {
        TdcTable table = TdcTable.of(engine);
        TdcTable.Turn turn = table.turnFrom(table.before(cylinder));
        String sign = engine.rotor() == Rotor.NONE
                ? "whistle in hole " + cylinder
                : "rotor at post " + cylinder + ", mark " + cylinder + " at the pointer";
        return new Sentence("From " + turn.from() + " turn the crank **" + turn.crankDegrees() + "°**: " + sign + ". "
                + figures.of(LeakTester.referenceSupply(), Shown.COMPRESSION) + " at 10° off turns it with **"
                + figures.of(torque(engine, LeakTester.referenceSupply(), OFF), Shown.TORQUE) + "**.");
    }

    /** Torque on the crank in N·m. */
    static double torque(EngineProfile engine, double supply, double degrees) {
        return CrankPush.of(engine.geometry()).torque(supply, degrees);
    }

    static String degrees(double angle) {
        return Figures.number(angle, angle == Math.rint(angle) ? 0 : 1) + "°";
    }
}
