package org.pullproof.engine;

/**
 * Where the piston stands for an angle of the crank. Immutable.
 *
 * <p>Angles are degrees of crank after top dead centre, of any size and sign.
 *
 * @param strokeMetre stroke in m, greater than zero
 * @param rodMetre length of the connecting rod in m, more than half the stroke
 */
public record CrankGeometry(double strokeMetre, double rodMetre) {
    public CrankGeometry {
        if (!(strokeMetre > 0) || !(rodMetre > strokeMetre / 2) || Double.isInfinite(rodMetre)) {
            throw new IllegalArgumentException("The rod is longer than half the stroke, and both are greater than zero;"
                    + " the stroke was " + strokeMetre * 1e3 + " mm, the rod " + rodMetre * 1e3 + " mm");
        }
    }

    public static CrankGeometry of(Geometry geometry) {
        return new CrankGeometry(geometry.strokeMetre(), geometry.rodMetre());
    }

    private double crankRadius() {
        return strokeMetre / 2;
    }

    /**
     * Returns the way of the piston from top dead centre, in m.
     *
     * <pre>  x = r (1 − cos θ) + l − √(l² − r² sin² θ),   r = stroke/2, l = rod</pre>
     *
     * <p>Source: slider-crank, closed form as in an open SymPy derivation (EngineDynamics,
     * piston_kinematics_EOMs) [P]; checked in {@code CrankGeometryTest} against 30-digit arithmetic.
     */
    public double pistonFromTop(double degrees) {
        double r = crankRadius();
        double angle = Math.toRadians(degrees);
        return r * (1 - Math.cos(angle)) + rodMetre - rodAlongBore(angle);
    }

    /**
     * Returns dx/dθ in m per radian: the lever on which pressure above the piston turns the crank.
     *
     * <pre>  dx/dθ = r sin θ (1 + r cos θ / √(l² − r² sin² θ))</pre>
     *
     * <p>Source: derivative of {@link #pistonFromTop}. Zero at both dead centres.
     */
    public double pistonRate(double degrees) {
        double r = crankRadius();
        double angle = Math.toRadians(degrees);
        return r * Math.sin(angle) * (1 + r * Math.cos(angle) / rodAlongBore(angle));
    }

    private double rodAlongBore(double angle) {
        double across = crankRadius() * Math.sin(angle);
        return Math.sqrt(rodMetre * rodMetre - across * across);
    }
}
