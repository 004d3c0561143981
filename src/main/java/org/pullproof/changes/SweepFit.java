package org.pullproof.changes;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Power against a numeric setting x as a parabola, with the drift beside it.
 *
 * <pre>
 * columns 1, x − x̄, (x − x̄)², time ;  optimum x* = x̄ − β₁/(2β₂)
 * 90 % interval (Fieller): g = t(0.95, ν)²s² ;  a = 4(β₂² − gG₂₂), e = 4(β₁β₂ − gG₁₂), f = β₁² − gG₁₁
 * x̄ + (−e ∓ √(e² − 4af))/(2a)   if a &gt; 0, e² &gt; 4af and β₂ &lt; 0
 * </pre>
 *
 * <p>Spark timing: curvature assumed β₂ ~ N(−0.04, 0.02²) percent a square degree (O, simulated). Source of the interval: Fieller
 * 1954 (P).
 */
final class SweepFit {
    private static final double TIMING_CURVATURE = -0.04;
    private static final double TIMING_CURVATURE_SD = 0.02;
    private static final int SLOPE = 1;
    private static final int BEND = 2;

    private final ChangeFit fit;
    private final double middle;

    /**
     * @param pulls those of the sweep, each with its place in the day
     * @param x the level of each
     * @param timing whether x is spark timing in degrees
     */
    SweepFit(List<Observation> pulls, double[] x, boolean timing, Prior prior) {
        this.middle = Arrays.stream(x).average().orElseThrow();
        double[][] columns = new double[x.length][];
        for (int i = 0; i < x.length; i++) {
            columns[i] = powers(x[i]);
        }
        double weight = prior.scatter() / TIMING_CURVATURE_SD;
        List<PriorRow> assumed = timing ? List.of(PriorRow.on(BEND, 3, weight, weight * TIMING_CURVATURE)) : List.of();
        this.fit = ChangeFit.of(new Design(pulls, prior, columns, assumed));
    }

    private double[] powers(double x) {
        double from = x - middle;
        return new double[] {1, from, from * from};
    }

    ChangeFit fit() {
        return fit;
    }

    boolean bendsDown() {
        return fit.level(BEND) < 0;
    }

    /** x*; means a peak only where the curve bends down. */
    double optimum() {
        return middle - fit.level(SLOPE) / (2 * fit.level(BEND));
    }

    /** The fitted power at a level, in y. */
    double at(double x) {
        double[] powers = powers(x);
        return fit.level(0) * powers[0] + fit.level(SLOPE) * powers[1] + fit.level(BEND) * powers[2];
    }

    /** The difference of two levels by the curve. */
    Estimate compare(double x, double reference) {
        RealVector contrast = new ArrayRealVector(fit.design().columns());
        contrast.setSubVector(0, new ArrayRealVector(powers(x)).subtract(new ArrayRealVector(powers(reference))));
        double v = fit.regression().spread(contrast).v();
        return new Estimate(at(x) - at(reference), fit.scatter() * Math.sqrt(v), fit.degrees());
    }

    /** The two ends of a 90 % interval. */
    record Interval(double low, double high) {}

    /** Fieller's interval of the optimum; empty where no peak is proved. */
    Optional<Interval> interval() {
        RealMatrix g = fit.regression().g();
        double t = Quantile.ofInterval(fit.degrees()) * fit.scatter();
        double slope = fit.level(SLOPE);
        double bend = fit.level(BEND);
        double a = 4 * (bend * bend - t * t * g.getEntry(BEND, BEND));
        double e = 4 * (slope * bend - t * t * g.getEntry(SLOPE, BEND));
        double f = slope * slope - t * t * g.getEntry(SLOPE, SLOPE);
        double root = e * e - 4 * a * f;
        return a > 0 && root > 0 && bend < 0
                ? Optional.of(new Interval(
                        middle + (-e - Math.sqrt(root)) / (2 * a), middle + (-e + Math.sqrt(root)) / (2 * a)))
                : Optional.empty();
    }
}
