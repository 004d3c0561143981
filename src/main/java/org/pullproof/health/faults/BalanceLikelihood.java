package org.pullproof.health.faults;

import java.util.Arrays;
import java.util.Optional;
import org.pullproof.health.faults.Hypotheses.Left;

/**
 * B: how likely the drop of one cylinder is, for what is left at idle, by (b, κ).
 *
 * <pre>
 *  Σ over (0.92, τ = 1.5 κ) (0.08, τ = 3.75 κ) of N(drop − b u; √(s²/n + 0.3² + (τ b (0.35 + 0.65 u))²)), n rounds
 * </pre>
 *
 * <p>mixed with a blunder of chance 0.004/n. τ is the true unevenness of sound cylinders: tied to κ, it is learnt from how even the
 * other cylinders are. Section 4 of the method [O, J].
 */
final class BalanceLikelihood {
    private final FaultConstants.BalanceScatter how;
    private final BalanceGrid grid;
    private final Optional<Drops> drops;
    private final boolean sure;

    /**
     * @param sure whether the reading is no blunder: its flat part is left out
     */
    BalanceLikelihood(Optional<Drops> drops, BalanceGrid grid, FaultConstants.BalanceScatter how, boolean sure) {
        this.how = how;
        this.grid = grid;
        this.drops = drops;
        this.sure = sure;
    }

    /** B of one idle share, by point. */
    double[] of(Left left) {
        double[] likelihood = new double[grid.points()];
        if (drops.isEmpty()) {
            Arrays.fill(likelihood, 1);
            return likelihood;
        }
        double flat = 1 / (how.widthShare() * grid.largestDrop());
        double blunder = how.blunder() / drops.get().rounds();
        for (int point = 0; point < likelihood.length; point++) {
            likelihood[point] = left.count() == 0
                    ? flat
                    : (1 - blunder) * mean(left, drops.get(), point) + (sure ? 0 : blunder * flat);
        }
        return likelihood;
    }

    private double mean(Left left, Drops read, int point) {
        double sum = 0;
        for (int i = 0; i < left.count(); i++) {
            double u = left.u(i);
            sum += left.weight(i)
                    * (how.evenShare() * normal(read, u, how.even(), point)
                            + (1 - how.evenShare()) * normal(read, u, how.uneven(), point));
        }
        return sum;
    }

    private double normal(Drops read, double u, double unevenness, int point) {
        double b = grid.full(point);
        double s = grid.scatter(point);
        double tau = unevenness * grid.relative(point);
        double own = tau * b * (how.constant() + (1 - how.constant()) * u);
        double sd = Math.sqrt(s * s / read.rounds() + how.rounding() * how.rounding() + own * own);
        return Chance.normal(read.mean() - b * u, sd);
    }
}
