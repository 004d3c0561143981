package org.pullproof.worth.decision.draws;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Student's t at the same chance as a standard normal value: t = F_ν⁻¹(Φ(z)), cut at ± 6.
 *
 * <p>F_ν⁻¹ is slow and this is a smooth odd function of z, so it is taken at knots 0.05 apart and joined by a cubic spline: within
 * 1e-5 of the exact value up to the cut (StudentQuantileTest).
 */
final class StudentQuantile implements DoubleUnaryOperator {
    private static final double CUT = 6;
    private static final double KNOT = 0.05;

    /** Φ(−z) is still an exact number there; the cut lies nearer for ν below 800. */
    private static final double LAST = 6.5;

    private final PolynomialSplineFunction spline;

    StudentQuantile(double degrees) {
        int knots = (int) Math.round(LAST / KNOT);
        double[] z = new double[2 * knots + 1];
        double[] t = new double[2 * knots + 1];
        NormalDistribution normal = new NormalDistribution();
        TDistribution student = new TDistribution(degrees);
        for (int k = 1; k <= knots; k++) {
            double value = -student.inverseCumulativeProbability(normal.cumulativeProbability(-k * KNOT));
            put(z, t, knots + k, k * KNOT, value);
            put(z, t, knots - k, -k * KNOT, -value);
        }
        this.spline = new SplineInterpolator().interpolate(z, t);
    }

    private static void put(double[] z, double[] t, int at, double normal, double student) {
        z[at] = normal;
        t[at] = student;
    }

    @Override
    public double applyAsDouble(double z) {
        double t = spline.value(Math.max(-LAST, Math.min(LAST, z)));
        return Math.max(-CUT, Math.min(CUT, t));
    }
}
