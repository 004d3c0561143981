package org.pullproof.changes;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Generalised least squares with prior rows, made ready for any number of responses.
 *
 * <pre>
 * V = L·Lᵀ ;  X̃ = L⁻¹X over the prior rows ;  G = (X̃ᵀX̃)⁻¹
 * β = argmin ‖ỹ − X̃β‖²,   ỹ = L⁻¹y over the responses of the prior rows
 * </pre>
 *
 * <p>Source: Aitken 1935 (P).
 */
final class Regression {
    private final Design design;
    private final double sigma;
    private final RealMatrix lower;
    private final RealMatrix rows;
    private final RealVector priorResponses;
    private final RealMatrix inverse;
    private final RealMatrix g;

    Regression(Design design, double sigma) {
        this(design, sigma, new CholeskyDecomposition(design.covariance()).getL());
    }

    private Regression(Design design, double sigma, RealMatrix lower) {
        this.design = design;
        this.sigma = sigma;
        this.lower = lower;
        List<PriorRow> assumed = design.priorRows(sigma);
        this.rows = stacked(whitened(design.rows()), assumed);
        this.priorResponses = new ArrayRealVector(
                assumed.stream().mapToDouble(PriorRow::response).toArray());
        this.inverse = new QRDecomposition(rows).getSolver().getInverse();
        this.g = inverse.multiply(inverse.transpose());
    }

    /** The same pulls with another scatter that the day level is compared with. */
    Regression withSigma(double other) {
        return new Regression(design, other, lower);
    }

    private static RealMatrix stacked(RealMatrix upper, List<PriorRow> below) {
        RealMatrix both = new Array2DRowRealMatrix(upper.getRowDimension() + below.size(), upper.getColumnDimension());
        both.setSubMatrix(upper.getData(), 0, 0);
        for (int i = 0; i < below.size(); i++) {
            both.setRow(upper.getRowDimension() + i, below.get(i).row());
        }
        return both;
    }

    /** L⁻¹ times a matrix of one row a pull. */
    RealMatrix whitened(RealMatrix matrix) {
        RealMatrix whitened = matrix.copy();
        for (int column = 0; column < matrix.getColumnDimension(); column++) {
            whitened.setColumnVector(column, whitened(matrix.getColumnVector(column)));
        }
        return whitened;
    }

    private RealVector whitened(RealVector vector) {
        RealVector solved = vector.copy();
        MatrixUtils.solveLowerTriangularSystem(lower, solved);
        return solved;
    }

    /**
     * What one response gives.
     *
     * @param beta β
     * @param residuals whitened residuals, then the misfits of the prior rows
     */
    record Solution(RealVector beta, RealVector residuals) {
        /** S, the sum of their squares. */
        double misfit() {
            return residuals.dotProduct(residuals);
        }
    }

    /**
     * @param y one figure a pull
     */
    Solution solve(double[] y) {
        RealVector response = whitened(new ArrayRealVector(y)).append(priorResponses);
        RealVector beta = inverse.operate(response);
        return new Solution(beta, response.subtract(rows.operate(beta)));
    }

    Design design() {
        return design;
    }

    double sigma() {
        return sigma;
    }

    /** X̃ of the pulls, without the prior rows. */
    RealMatrix pullRows() {
        return rows.getSubMatrix(0, design.pulls().size() - 1, 0, rows.getColumnDimension() - 1);
    }

    RealMatrix g() {
        return g;
    }

    /**
     * Variance of a contrast in units of s².
     *
     * @param v cᵀGc
     * @param dayShare w, the part of it that the prior rows of the day levels carry
     */
    record Spread(double v, double dayShare) {
        /** So many degrees of freedom are as good as endless: t differs from the normal quantile by less than 1e-5. */
        private static final double ENDLESS = 1e6;

        /** ν/(1 − w)². */
        double degrees(double ofTheFit) {
            double left = 1 - dayShare;
            return Math.min(ENDLESS, ofTheFit / (left * left));
        }
    }

    Spread spread(RealVector contrast) {
        RealVector moved = g.operate(contrast);
        double v = contrast.dotProduct(moved);
        double share = 0;
        for (int day = 0; design.hasDayLevels() && day < design.days(); day++) {
            double level = moved.getEntry(design.dayColumn(day))
                    * sigma
                    / design.prior().dayLevel();
            share += level * level;
        }
        return new Spread(v, share / v);
    }

    /** Newer less older. */
    RealVector contrast(int newer, int older) {
        RealVector contrast = new ArrayRealVector(design.columns());
        contrast.setEntry(newer, 1);
        contrast.setEntry(older, -1);
        return contrast;
    }
}
