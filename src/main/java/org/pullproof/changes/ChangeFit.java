package org.pullproof.changes;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The effects of the settings and the drift, fitted to the pulls by generalised least squares with prior rows.
 *
 * <pre>
 * ν = ν0 + N − (columns without a prior row) ;  s² = (ν0·s0² + S)/ν
 * contrast c:  estimate cᵀβ,  se = s·√(cᵀGc)
 * </pre>
 *
 * <p>Source: the algebra is generalised least squares (Aitken 1935, P), see {@link Regression}; the model and its constants are
 * this project's own, chosen on simulated pulls (O), see docs/methods/changes.md. Several days: each has its own level, held by
 * a prior row that takes the scatter of a first round; the share w of those rows in a variance lowers nothing but the trust in
 * ν, so t is taken at ν/(1 − w)².
 */
final class ChangeFit {
    /** A pull with less than this of its own weight left has nothing to be checked against. */
    private static final double UNCHECKED = 0.05;

    private final Design design;
    private final Regression regression;
    private final Regression.Solution solution;
    private final double scatter;

    private ChangeFit(Regression regression, Regression.Solution solution, double scatter) {
        this.design = regression.design();
        this.regression = regression;
        this.solution = solution;
        this.scatter = scatter;
    }

    /** Fits the pulls; with several days in two rounds, the second with the scatter of the first. */
    static ChangeFit of(List<Observation> pulls, Prior prior) {
        return of(Design.ofSettings(pulls, prior));
    }

    static ChangeFit of(Design design) {
        ChangeFit first = firstRound(design);
        return first.design.hasDayLevels() ? first.secondRound() : first;
    }

    /** The fit that says what the scatter is; with one day it is the whole answer. */
    static ChangeFit firstRound(Design design) {
        Regression regression = new Regression(design, design.prior().scatter());
        Regression.Solution solution = regression.solve(design.response());
        return new ChangeFit(regression, solution, scatter(design, solution));
    }

    private ChangeFit secondRound() {
        Regression again = regression.withSigma(scatter);
        return new ChangeFit(again, again.solve(design.response()), scatter);
    }

    /** s, from what is assumed and what the pulls say. */
    static double scatter(Design design, Regression.Solution solution) {
        Prior prior = design.prior();
        double assumed = prior.weight() * prior.scatter() * prior.scatter();
        return Math.sqrt((assumed + solution.misfit()) / design.degrees());
    }

    Design design() {
        return design;
    }

    Regression regression() {
        return regression;
    }

    /** ν, degrees of freedom of the fit. */
    double degrees() {
        return design.degrees();
    }

    /** s, pull-to-pull scatter in percent. */
    double scatter() {
        return scatter;
    }

    /** A coefficient of the asked columns, by its number. */
    double level(int effect) {
        return solution.beta().getEntry(effect);
    }

    /** Drift of one day in percent a pull. */
    double drift(int day) {
        return solution.beta().getEntry(design.driftColumn(day));
    }

    double driftStandardError(int day) {
        int column = design.driftColumn(day);
        return scatter * Math.sqrt(regression.g().getEntry(column, column));
    }

    /** The fitted drift at the place of a pull, in percent; 0 at the middle of its day. */
    double driftAt(Observation pull) {
        return drift(pull.day()) * design.centredClock(pull);
    }

    /** The difference newer less older. */
    Estimate compare(int newer, int older) {
        RealVector contrast = regression.contrast(newer, older);
        Regression.Spread spread = regression.spread(contrast);
        return new Estimate(
                contrast.dotProduct(solution.beta()), scatter * Math.sqrt(spread.v()), spread.degrees(degrees()));
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
        RealMatrix rows = regression.pullRows();
        RealMatrix levels = rows.getSubMatrix(0, rows.getRowDimension() - 1, 0, design.effects() - 1);
        RealVector moved = new QRDecomposition(levels).getSolver().solve(rows.getColumnVector(design.driftColumn(0)));
        return moved.getEntry(newer) - moved.getEntry(older);
    }

    /**
     * Deletion residual of each pull: how far it lies from what the others say of it, in units of its standard error.
     *
     * <pre>
     * M = V⁻¹ − V⁻¹X G XᵀV⁻¹ ;  q = My ;  d = diag M
     * s²₍ᵢ₎ = (ν s² − qᵢ²/dᵢ)/(ν − 1) ;  tᵢ = qᵢ/√(dᵢ s²₍ᵢ₎)
     * </pre>
     *
     * <p>Source: leave-one-out deletion residuals (Cook and Weisberg 1982, P).
     *
     * @return one a pull; 0 for a pull that nothing checks (dᵢ below 0.05), such as the only one of its setting
     */
    double[] deletionResiduals() {
        int pulls = design.pulls().size();
        RealMatrix whitening = regression.whitened(MatrixUtils.createRealIdentityMatrix(pulls));
        RealMatrix x = regression.pullRows();
        RealMatrix left = MatrixUtils.createRealIdentityMatrix(pulls)
                .subtract(x.multiply(regression.g()).multiply(x.transpose()));
        RealMatrix m = whitening.transpose().multiply(left).multiply(whitening);
        double[] q = whitening
                .transpose()
                .operate(solution.residuals().getSubVector(0, pulls))
                .toArray();
        return IntStream.range(0, pulls)
                .mapToDouble(i -> deletionResidual(q[i], m.getEntry(i, i)))
                .toArray();
    }

    private double deletionResidual(double q, double d) {
        if (d < UNCHECKED) {
            return 0;
        }
        double without = (degrees() * scatter * scatter - q * q / d) / (degrees() - 1);
        return q / Math.sqrt(d * without);
    }
}
