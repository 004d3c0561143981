package org.pullproof.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.RealVector;

/**
 * The fit of the band power, made again at every engine speed of a grid, with a simultaneous band.
 *
 * <pre>
 * D(r) = cᵀβ(r) ;  band D ± c·se(r) ;  U = E/‖E‖,  E = whitened residuals and misfits of the prior rows
 * κ̂ = Σ ‖U(r+1) − U(r)‖ ;  κ₀ = (ν0·(r_max − r_min)/500 + (N − K)·κ̂)/(ν0 + N − K)
 * c from 2·P(T &gt; c) + (κ₀/π)(1 + c²/ν)^(−ν/2) = 0.10
 * </pre>
 *
 * <p>Source: tube formula (Hotelling 1939, Naiman 1986, P); the length assumed beforehand, one turn in 500 rpm, is this
 * project's own (O).
 */
final class CurveFit {
    /** Distance of the grid, rpm. */
    static final int STEP = 200;

    private static final double RPM_OF_ONE_TURN = 500;
    private static final int FEWEST_POINTS = 3;
    private static final double OUTSIDE = 0.10;

    private final ChangeFit band;
    private final int[] rpm;
    private final List<Regression.Solution> solutions = new ArrayList<>();
    private final double critical;

    /**
     * @param band the fit of the band power of the same pulls
     * @param rpm the grid
     * @param curves 100·ln(power) of each pull at each speed of the grid
     */
    CurveFit(ChangeFit band, int[] rpm, double[][] curves) {
        this.band = band;
        this.rpm = rpm.clone();
        for (int bin = 0; bin < rpm.length; bin++) {
            int at = bin;
            double[] y = IntStream.range(0, curves.length)
                    .mapToDouble(pull -> smoothed(curves[pull], at))
                    .toArray();
            solutions.add(band.regression().solve(y));
        }
        this.critical = critical(assumedLength(), band.degrees());
    }

    /** Fits the curves of these pulls over the speeds that all of them reach; empty if that is too little to speak of. */
    static Optional<CurveFit> of(ChangeFit band, PullSequence pulls) {
        int[] rpm = pulls.commonGrid(STEP);
        return rpm.length < FEWEST_POINTS ? Optional.empty() : Optional.of(new CurveFit(band, rpm, pulls.curves(rpm)));
    }

    /** Mean of a point and its neighbours, fewer at the ends. */
    private static double smoothed(double[] curve, int bin) {
        return IntStream.rangeClosed(Math.max(0, bin - 1), Math.min(curve.length - 1, bin + 1))
                .mapToDouble(i -> curve[i])
                .average()
                .orElseThrow();
    }

    /** κ̂. */
    double measuredLength() {
        double length = 0;
        for (int bin = 1; bin < rpm.length; bin++) {
            length += direction(bin).getDistance(direction(bin - 1));
        }
        return length;
    }

    /** U; no direction where the settings explain everything. */
    private RealVector direction(int bin) {
        RealVector residuals = solutions.get(bin).residuals();
        double norm = residuals.getNorm();
        return norm < 1e-9 ? residuals.mapMultiply(0) : residuals.mapDivide(norm);
    }

    /** κ₀. */
    double assumedLength() {
        double weight = band.design().prior().weight();
        double free = band.degrees() - weight;
        double expected = (rpm[rpm.length - 1] - rpm[0]) / RPM_OF_ONE_TURN;
        double measured = free > 0 ? free * measuredLength() : 0;
        return (weight * expected + measured) / (weight + free);
    }

    /** c, by which se is multiplied. */
    double critical() {
        return critical;
    }

    private static double critical(double length, double degrees) {
        TDistribution t = new TDistribution(degrees);
        double low = 0;
        double high = 100;
        while (high - low > 1e-9) {
            double c = (low + high) / 2;
            double outside =
                    2 * t.cumulativeProbability(-c) + length / Math.PI * Math.pow(1 + c * c / degrees, -degrees / 2);
            low = outside > OUTSIDE ? c : low;
            high = outside > OUTSIDE ? high : c;
        }
        return high;
    }

    /** The difference newer less older at one speed of the grid, in y. */
    Estimate difference(int bin, int newer, int older) {
        RealVector contrast = band.regression().contrast(newer, older);
        Regression.Solution solution = solutions.get(bin);
        double scatter = ChangeFit.scatter(band.design(), solution);
        double v = band.regression().spread(contrast).v();
        return new Estimate(contrast.dotProduct(solution.beta()), scatter * Math.sqrt(v), band.degrees());
    }

    CurveBand compare(int newer, int older) {
        List<CurveBand.Point> points = new ArrayList<>();
        for (int bin = 0; bin < rpm.length; bin++) {
            Estimate at = difference(bin, newer, older);
            double half = critical * at.standardError();
            points.add(new CurveBand.Point(
                    rpm[bin],
                    Estimate.percent(at.difference()),
                    Estimate.percent(at.difference() - half),
                    Estimate.percent(at.difference() + half)));
        }
        return new CurveBand(points, regions(points));
    }

    private static List<CurveBand.Region> regions(List<CurveBand.Point> points) {
        List<CurveBand.Region> regions = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= points.size(); i++) {
            if (i == points.size() || sign(points.get(i)) != sign(points.get(start))) {
                CurveBand.Point first = points.get(start);
                int last = points.get(i - 1).rpm();
                if (sign(first) != 0 && last - first.rpm() >= STEP) {
                    regions.add(new CurveBand.Region(first.rpm(), last, sign(first)));
                }
                start = i;
            }
        }
        return regions;
    }

    private static int sign(CurveBand.Point point) {
        return point.low() > 0 ? 1 : point.high() < 0 ? -1 : 0;
    }
}
