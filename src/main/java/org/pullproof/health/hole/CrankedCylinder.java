package org.pullproof.health.hole;

import org.pullproof.engine.CrankGeometry;
import org.pullproof.engine.Geometry;
import org.pullproof.health.leakdown.Nozzle;

/**
 * One cylinder with a hole, cranked against a compression gauge. Own derivation [O] with constants of judgement.
 *
 * <p>The crank goes in steps from intake closing to after top dead centre. In each step, all pressures absolute:
 *
 * <pre>
 *  p ← p (V/V′)^n                                          compressed or expanded, V with hose and less the oil left
 *  p ← p (1 − min(ṁ Δt/m, most)),  m = p V′/(R T)          leaks, ṁ = C_d A p ψ(p_a/p)/√(R T); inwards below p_a
 *  both ← (p V′ + p_g V_g)/(V′ + V_g)  where p &gt; p_g        the gauge keeps its highest, behind a check valve
 * </pre>
 */
public final class CrankedCylinder {
    private static final double GAS_CONSTANT = 287.05;

    private final Cranking constants;
    private final GaugeTest how;
    private final double[] volume;
    private final double[] compressed;
    private final double secondsAStep;

    /**
     * @param oilLeftCm3 oil that stays in the chamber and takes its room, cm³
     */
    public CrankedCylinder(Geometry geometry, GaugeTest how, double oilLeftCm3, Cranking constants) {
        this.constants = constants;
        this.how = how;
        this.volume = volumes(geometry, oilLeftCm3, constants);
        this.compressed = new double[volume.length];
        for (int step = 1; step < volume.length; step++) {
            compressed[step] = Math.pow(volume[step - 1] / volume[step], constants.exponent());
        }
        this.secondsAStep = constants.stepDegrees() / (6 * how.rpm());
    }

    /** What the gauge shows after the first and after the last stroke, Pa over the surroundings. */
    public record Shown(double first, double last) {}

    private static double[] volumes(Geometry geometry, double oilLeftCm3, Cranking constants) {
        CrankGeometry crank = CrankGeometry.of(geometry);
        double piston = Math.PI / 4 * geometry.boreMetre() * geometry.boreMetre();
        double atTop =
                geometry.sweptVolume() / (geometry.compressionRatio() - 1) + (constants.hoseCm3() - oilLeftCm3) * 1e-6;
        double from = geometry.intakeClosingDegrees() - 180;
        int steps = (int) Math.floor((constants.untilDegrees() - from) / constants.stepDegrees() + 1e-9);
        double[] volumes = new double[steps + 1];
        for (int step = 0; step <= steps; step++) {
            volumes[step] = atTop + piston * crank.pistonFromTop(from + step * constants.stepDegrees());
        }
        return volumes;
    }

    /**
     * Cranks it.
     *
     * @param areaMm2 geometric area of the hole, mm², not negative
     */
    public Shown crank(double areaMm2) {
        double effective = constants.dischargeCoefficient() * areaMm2 * 1e-6;
        double surroundings = how.stationPascal();
        double gauge = stroke(effective, surroundings);
        double first = gauge;
        for (int stroke = 1; stroke < how.strokes(); stroke++) {
            gauge = stroke(effective, gauge);
        }
        return new Shown(first - surroundings, gauge - surroundings);
    }

    private double stroke(double effectiveArea, double gaugeBefore) {
        double gauge = gaugeBefore;
        double gaugeVolume = constants.gaugeCm3() * 1e-6;
        double p = constants.startShare() * how.stationPascal();
        for (int step = 1; step < volume.length; step++) {
            p *= compressed[step];
            p *= 1 - Math.min(shareLost(effectiveArea, p, volume[step]), constants.mostLost());
            if (p > gauge) {
                p = (p * volume[step] + gauge * gaugeVolume) / (volume[step] + gaugeVolume);
                gauge = p;
            }
        }
        return gauge;
    }

    /** Share of the air that leaves in one step; negative where air comes in. */
    private double shareLost(double effectiveArea, double p, double volume) {
        double kelvin = constants.airKelvin();
        double mass = p * volume / (GAS_CONSTANT * kelvin);
        double out = p >= how.stationPascal()
                ? Nozzle.airFlow(effectiveArea, p, how.stationPascal(), kelvin)
                : -Nozzle.airFlow(effectiveArea, how.stationPascal(), p, kelvin);
        return out * secondsAStep / mass;
    }
}
