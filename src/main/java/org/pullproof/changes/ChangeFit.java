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
 * The effects of the settings and the drift, fitted to the pulls by generalised least squares with prior rows.
 *
 * <pre>
 * V = L·Lᵀ ;  X̃ = L⁻¹X over the prior rows, ỹ = L⁻¹y over zeros
 * β = argmin ‖ỹ − X̃β‖² ;  S = that minimum ;  G = (X̃ᵀX̃)⁻¹
 * ν = ν0 + N − (columns without a prior row) ;  s² = (ν0·s0² + S)/ν
 * contrast c:  estimate cᵀβ,  se = s·√(cᵀGc)
 * </pre>
 *
 * <p>Source: the algebra is generalised least squares (Aitken 1935, P); the model and its constants are this project's own,
 * chosen on simulated pulls (O), see docs/methods/changes.md. Several days: each has its own level, held by a prior row that
 * takes the scatter of a first round; the share w of those rows in a variance lowers nothing but the trust in ν, so t is taken
 * at ν/(1 − w)².
 */
final class ChangeFit {
    /** So many degrees of freedom are as good as endless: t differs from the normal quantile by less than 1e-5. */
    private static final double ENDLESS = 1e6;

    private final Design design;
    private final Prior prior;
    private final double sigma;
    private final RealVector beta;
    private final RealMatrix g;
    private final double misfit;
    private final double scatter;

    private ChangeFit(Design design, Prior prior, double sigma, double fixedScatter) {
        this.design = design;
        this.prior = prior;
        this.sigma = sigma;
        RealMatrix rows = stacked(whitened(design.rows()), design.priorRows(sigma));
        RealVector response = whitenedResponse(rows.getRowDimension());
        RealMatrix inverse = new QRDecomposition(rows).getSolver().getInverse();
        this.beta = inverse.operate(response);
        this.g = inverse.multiply(inverse.transpose());
        this.misfit = response.subtract(rows.operate(beta)).getNorm();
        this.scatter = fixedScatter > 0 ? fixedScatter : ownScatter();
    }

    /** Fits the pulls; with several days in two rounds, the second with the scatter of the first. */
    static ChangeFit of(List<Observation> pulls, Prior prior) {
        Design design = new Design(pulls, prior);
        ChangeFit first = new ChangeFit(design, prior, prior.scatter(), 0);
        return design.hasDayLevels() ? new ChangeFit(design, prior, first.scatter, first.scatter) : first;
    }

    private double ownScatter() {
        double assumed = prior.weight() * prior.scatter() * prior.scatter();
        return Math.sqrt((assumed + misfit * misfit) / degrees());
    }

    private RealMatrix whitened(RealMatrix matrix) {
        RealMatrix lower = new CholeskyDecomposition(design.covariance()).getL();
        RealMatrix whitened = matrix.copy();
        for (int column = 0; column < matrix.getColumnDimension(); column++) {
            RealVector solved = matrix.getColumnVector(column);
            MatrixUtils.solveLowerTriangularSystem(lower, solved);
            whitened.setColumnVector(column, solved);
        }
        return whitened;
    }

    private RealVector whitenedResponse(int rows) {
        RealVector y = whitened(new Array2DRowRealMatrix(design.response())).getColumnVector(0);
        return y.append(new ArrayRealVector(rows - design.pulls()));
    }

    private static RealMatrix stacked(RealMatrix upper, List<double[]> lower) {
        RealMatrix both = new Array2DRowRealMatrix(upper.getRowDimension() + lower.size(), upper.getColumnDimension());
        both.setSubMatrix(upper.getData(), 0, 0);
        for (int i = 0; i < lower.size(); i++) {
            both.setRow(upper.getRowDimension() + i, lower.get(i));
        }
        return both;
    }

    /** ν, degrees of freedom of the fit. */
    double degrees() {
        return prior.weight() + design.pulls() - design.freeColumns();
    }

    /** s, pull-to-pull scatter in percent. */
    double scatter() {
        return scatter;
    }

    /** Level of a setting in y; only differences of levels mean anything where there are several days. */
    double level(int setting) {
        return beta.getEntry(design.settingColumn(setting));
    }

    /** Drift of one day in percent a pull. */
    double drift(int day) {
        return beta.getEntry(design.driftColumn(day));
    }

    double driftStandardError(int day) {
        int column = design.driftColumn(day);
        return scatter * Math.sqrt(g.getEntry(column, column));
    }

    /** The fitted drift at the place of a pull, in percent; 0 at the middle of its day. */
    double driftAt(Observation pull) {
        return drift(pull.day()) * design.centredClock(pull);
    }

    /** The difference newer less older. */
    Estimate compare(int newer, int older) {
        RealVector contrast = new ArrayRealVector(design.columns());
        contrast.setEntry(design.settingColumn(newer), 1);
        contrast.setEntry(design.settingColumn(older), -1);
        RealVector spread = g.operate(contrast);
        double variance = contrast.dotProduct(spread);
        return new Estimate(
                contrast.dotProduct(beta), scatter * Math.sqrt(variance), degreesOf(dayShare(spread) / variance));
    }

    /** Part of a variance that the prior rows of the day levels carry. */
    private double dayShare(RealVector spread) {
        double share = 0;
        for (int day = 0; design.hasDayLevels() && day < design.days(); day++) {
            double level = spread.getEntry(design.dayColumn(day)) * sigma / prior.dayLevel();
            share += level * level;
        }
        return share;
    }

    private double degreesOf(double dayShare) {
        double left = 1 - dayShare;
        return Math.min(ENDLESS, degrees() / (left * left));
    }

    /** Whether some setting was pulled twice on a day, so that drift shows in the pulls and is not only assumed to be small. */
    boolean driftIsMeasured() {
        return design.hasRepeats();
    }

    /**
     * Leverage of time on a difference: each 1 % a pull of drift adds so many percent to it, were drift not in the fit.
     *
     * <pre> λ = cᵀ (XₖᵀV⁻¹Xₖ)⁻¹ XₖᵀV⁻¹ t,   Xₖ = the setting columns</pre>
     *
     * @return λ; 0 where there are several days, which have no common clock
     */
    double driftLeverage(int newer, int older) {
        if (design.hasDayLevels()) {
            return 0;
        }
        RealMatrix rows = whitened(design.rows());
        int settings = design.driftColumn(0);
        RealMatrix levels = rows.getSubMatrix(0, design.pulls() - 1, 0, settings - 1);
        RealVector moved = new QRDecomposition(levels).getSolver().solve(rows.getColumnVector(design.driftColumn(0)));
        return moved.getEntry(newer) - moved.getEntry(older);
    }
}
