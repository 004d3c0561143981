package org.pullproof.dyno;

import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.util.Pair;

/**
 * Finds {@link Drag} from speeds against time while nothing drives, without differentiating.
 *
 * <pre>  t(v) = t0 + ∫ m dv / (A + B·v + C·v²)  from v to the first speed</pre>
 *
 * <p>A, B, C and t0 by least squares of the speeds (Levenberg and Marquardt); the start is the linear fit of
 * {@code v = v0 − (A t + B ∫v dt + C ∫v² dt)/m}. The standard errors take the scatter of the speeds as independent (O). Checked
 * against a closed solution in {@code CoastDownTest}.
 */
public final class CoastDown {
    private static final int FEWEST = 8;
    private static final double LEAST_FALL = 0.25;
    private static final int PARAMETERS = 4;

    private final double mass;
    private final double[] second;
    private final double[] speed;

    private CoastDown(double mass, double[] second, double[] speed) {
        this.mass = mass;
        this.second = second;
        this.speed = speed;
    }

    /**
     * @param mass in kg; for a roll its inertia in kg·m²
     * @param second times, rising
     * @param speed in m/s, for a roll in rad/s
     * @throws IllegalArgumentException with a sentence if the speeds do not tell A, B and C
     */
    public static Drag fit(double mass, double[] second, double[] speed) {
        return new CoastDown(mass, second, speed).fit();
    }

    private Drag fit() {
        if (speed.length < FEWEST) {
            throw new IllegalArgumentException(
                    "a coast-down needs " + FEWEST + " samples of falling speed, was " + speed.length + ".");
        }
        if (!(slowest() > 0 && slowest() < (1 - LEAST_FALL) * fastest())) {
            throw new IllegalArgumentException("the speed falls by less than a quarter: let it coast longer.");
        }
        try {
            return solved(start());
        } catch (SingularMatrixException | MathIllegalStateException none) {
            throw new IllegalArgumentException("the speeds do not settle on A, B and C: let it coast longer.", none);
        }
    }

    private double slowest() {
        return java.util.Arrays.stream(speed).min().orElseThrow();
    }

    private double fastest() {
        return java.util.Arrays.stream(speed).max().orElseThrow();
    }

    private Drag solved(double[] start) {
        Drag first = drag(start);
        double[] weights = new double[speed.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.max(first.at(speed[i]), floor(first)) / mass;
        }
        Optimum found = new LevenbergMarquardtOptimizer().optimize(problem(start, weights));
        Drag drag = drag(found.getPoint().toArray());
        if (!(drag.at(slowest()) > 0 && drag.at(fastest()) > 0)) {
            throw new IllegalArgumentException(
                    "the speed does not fall over the whole of it: cut the file to the coasting.");
        }
        double variance = Math.pow(found.getResiduals().getNorm(), 2) / Math.max(1, speed.length - PARAMETERS);
        RealMatrix covariance =
                found.getCovariances(1e-14).getSubMatrix(0, 2, 0, 2).scalarMultiply(variance);
        return new Drag(drag.a(), drag.b(), drag.c(), covariance, slowest(), fastest());
    }

    private static double floor(Drag drag) {
        return 0.05 * Math.abs(drag.at(drag.fastest()));
    }

    private LeastSquaresProblem problem(double[] start, double[] weights) {
        RealVector target = new ArrayRealVector(second).ebeMultiply(new ArrayRealVector(weights));
        return new LeastSquaresBuilder()
                .start(start)
                .target(target)
                .model(point -> model(point, weights))
                .maxEvaluations(200)
                .maxIterations(200)
                .build();
    }

    private Pair<RealVector, RealMatrix> model(RealVector point, double[] weights) {
        Drag drag = drag(point.toArray());
        double[] times = new double[speed.length];
        double[][] slopes = new double[speed.length][PARAMETERS];
        for (int i = 0; i < speed.length; i++) {
            double low = Math.min(speed[i], speed[0]);
            double high = Math.max(speed[i], speed[0]);
            double sign = Math.signum(speed[0] - speed[i]) * mass * weights[i];
            boolean apart = high > low;
            times[i] = weights[i] * point.getEntry(3) + (apart ? sign * drag.integral(low, high, 0) : 0);
            for (int k = 0; k < 3; k++) {
                slopes[i][k] = apart ? sign * drag.slope(low, high, k) : 0;
            }
            slopes[i][3] = weights[i];
        }
        return new Pair<>(new ArrayRealVector(times), new Array2DRowRealMatrix(slopes));
    }

    private Drag drag(double[] point) {
        return new Drag(point[0], point[1], point[2], new Array2DRowRealMatrix(3, 3), slowest(), fastest());
    }

    /** A, B, C and the time of the first speed, from the linear form; a constant drag where that one would push. */
    private double[] start() {
        RealMatrix columns = new Array2DRowRealMatrix(speed.length, PARAMETERS);
        double travelled = 0;
        double squares = 0;
        for (int i = 0; i < speed.length; i++) {
            if (i > 0) {
                double step = second[i] - second[i - 1];
                travelled += step * (speed[i] + speed[i - 1]) / 2;
                squares += step * (speed[i] * speed[i] + speed[i - 1] * speed[i - 1]) / 2;
            }
            columns.setRow(i, new double[] {-(second[i] - second[0]) / mass, -travelled / mass, -squares / mass, 1});
        }
        double[] linear = new QRDecomposition(columns)
                .getSolver()
                .solve(new ArrayRealVector(speed))
                .toArray();
        return pushes(linear) ? constant() : new double[] {linear[0], linear[1], linear[2], second[0]};
    }

    private boolean pushes(double[] linear) {
        Drag drag = drag(linear);
        for (int i = 0; i <= 20; i++) {
            if (drag.at(slowest() + i * (fastest() - slowest()) / 20) <= 0) {
                return true;
            }
        }
        return false;
    }

    private double[] constant() {
        int last = speed.length - 1;
        return new double[] {mass * (speed[0] - speed[last]) / (second[last] - second[0]), 0, 0, second[0]};
    }
}
