package org.pullproof.dyno;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Value and slope of a noisy curve by the polynomial of least squares through the neighbours; the steps may be uneven.
 *
 * <pre>  min Σ (y_i − Σ_k c_k (x_i − x)^k)²,   value c_0, slope c_1</pre>
 *
 * <p>On even steps these are the weights of Savitzky and Golay (1964), as corrected by Steinier, Termonia and Deltour (1972) (P,
 * {@code LocalPolynomialTest}). A polynomial of the degree or below is reproduced exactly.
 */
final class LocalPolynomial {
    private final int degree;

    LocalPolynomial(int degree) {
        if (degree < 1 || degree > 5) {
            throw new IllegalArgumentException("degree is 1 to 5, was " + degree);
        }
        this.degree = degree;
    }

    /**
     * @param value of the polynomial at the place
     * @param slope there
     * @param slopeError standard error of the slope from the scatter about the polynomial; 0 if nothing is left over
     */
    record Fit(double value, double slope, double slopeError) {}

    /**
     * Fits the points from one index to before another, at the place {@code x}.
     *
     * @throws IllegalArgumentException if fewer points than coefficients lie there, or they stand at too few places
     */
    Fit at(double[] xs, double[] ys, int from, int to, double x) {
        int points = to - from;
        int terms = degree + 1;
        if (points < terms) {
            throw new IllegalArgumentException(
                    "A polynomial of degree " + degree + " needs " + terms + " points, was " + points);
        }
        double scale = Math.max(xs[to - 1] - x, x - xs[from]);
        RealMatrix powers = new Array2DRowRealMatrix(points, terms);
        double[] y = new double[points];
        for (int i = 0; i < points; i++) {
            double power = 1;
            for (int k = 0; k < terms; k++) {
                powers.setEntry(i, k, power);
                power *= (xs[from + i] - x) / scale;
            }
            y[i] = ys[from + i];
        }
        return solved(powers, new ArrayRealVector(y), scale);
    }

    private Fit solved(RealMatrix powers, RealVector y, double scale) {
        try {
            QRDecomposition qr = new QRDecomposition(powers, 1e-12);
            RealVector c = qr.getSolver().solve(y);
            int spare = y.getDimension() - c.getDimension();
            double variance = spare > 0 ? Math.pow(y.subtract(powers.operate(c)).getNorm(), 2) / spare : 0;
            RealMatrix inverse = new QRDecomposition(powers.transpose().multiply(powers), 0)
                    .getSolver()
                    .getInverse();
            return new Fit(c.getEntry(0), c.getEntry(1) / scale, Math.sqrt(variance * inverse.getEntry(1, 1)) / scale);
        } catch (SingularMatrixException tooFew) {
            throw new IllegalArgumentException("The points stand at too few places for degree " + degree, tooFew);
        }
    }
}
