package org.pullproof.health.leakdown;

import org.pullproof.engine.CrankGeometry;
import org.pullproof.engine.Geometry;

/**
 * How hard the air of a leak-down test turns the crank when the piston is not at top dead centre.
 *
 * @param crank stroke and rod
 * @param boreMetre bore in m
 */
public record CrankPush(CrankGeometry crank, double boreMetre) {

    public static CrankPush of(Geometry geometry) {
        return new CrankPush(CrankGeometry.of(geometry), geometry.boreMetre());
    }

    /**
     * Returns the torque on the crank in N·m; positive turns it away from top dead centre in the direction of the angle.
     *
     * <pre>  T = (p − p_a) A dx/dθ</pre>
     *
     * <p>Source: virtual work, own derivation [O]; friction is left out, so the crank may hold where this says it turns.
     *
     * @param overSurroundings pressure in the cylinder over the surroundings, Pa
     * @param degrees crank angle after top dead centre
     */
    public double torque(double overSurroundings, double degrees) {
        return overSurroundings * Math.PI / 4 * boreMetre * boreMetre * crank.pistonRate(degrees);
    }
}
