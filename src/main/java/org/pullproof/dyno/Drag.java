package org.pullproof.dyno;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What slows a body down at a speed, {@code F = A + B·v + C·v²}: for a car v is in m/s and F in N, for a roll v is in rad/s and F
 * in N·m. The form is that of 40 CFR 1066.210 (P).
 *
 * @param a in N or N·m
 * @param b for each unit of speed
 * @param c for each square of it
 * @param covariance of the three, 3 × 3, row by row
 * @param slowest lowest speed it was measured at
 * @param fastest highest one
 */
public record Drag(double a, double b, double c, RealMatrix covariance, double slowest, double fastest)
        implements RollLoss {
    private static final int NODES = 20;

    /** Known exactly, as in an example of a book. */
    static Drag exactly(double a, double b, double c) {
        return new Drag(a, b, c, new Array2DRowRealMatrix(3, 3), 0, Double.MAX_VALUE);
    }

    public double at(double speed) {
        return a + speed * (b + speed * c);
    }

    /** Standard error of the force at a speed. */
    public double errorAt(double speed) {
        ArrayRealVector powers = new ArrayRealVector(new double[] {1, speed, speed * speed});
        return Math.sqrt(Math.max(0, covariance.preMultiply(powers).dotProduct(powers)));
    }

    /** Standard error of A, B or C, for k from 0 to 2. */
    public double error(int k) {
        return Math.sqrt(covariance.getEntry(k, k));
    }

    @Override
    public double watt(double speed) {
        return at(speed) * speed;
    }

    @Override
    public double errorWatt(double speed) {
        return errorAt(speed) * speed;
    }

    /**
     * The time it takes to slow down from one speed to another with nothing else acting.
     *
     * <pre>  t = ∫ m dv / (A + B·v + C·v²)</pre>
     *
     * Checked against 40 CFR 86.529-98, figure F98-9, in {@code DragTest}.
     *
     * @param mass in kg, for a roll its inertia in kg·m²
     */
    public double seconds(double mass, double from, double to) {
        return integral(Math.min(from, to), Math.max(from, to), 0) * mass * Math.signum(from - to);
    }

    /** ∫ v^power / F dv. */
    double integral(double low, double high, int power) {
        return quadrature(low, high).integrate(speed -> Math.pow(speed, power) / at(speed));
    }

    /** Derivative of the time to slow down by A, B or C for a mass of 1. */
    double slope(double low, double high, int power) {
        return -quadrature(low, high).integrate(speed -> Math.pow(speed, power) / Math.pow(at(speed), 2));
    }

    private static GaussIntegrator quadrature(double low, double high) {
        return new GaussIntegratorFactory().legendre(NODES, low, high);
    }
}
