package org.pullproof.health.faults;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What all cylinders share and balance depends on: b, the drop of a full cylinder, and κ, the scatter relative to it. A point is one
 * (b, κ).
 *
 * <p>T is the mean of the upper half (rounded down, at least 2) of the cylinders' mean drops; b = T exp(level); the scatter of one
 * reading is s = √((κ b)² + floor²). Points weigh κ's prior × s^−ν exp(−SS/2s²) from repeats, made to sum 1.
 */
final class BalanceGrid {
    private static final double UNKNOWN_DROP = 100;
    private static final int LEAST_UPPER_HALF = 2;

    private final double typicalDrop;
    private final double largestDrop;
    private final double[] full;
    private final double[] relative;
    private final double[] scatter;
    private final double[] weights;
    private final boolean used;

    private BalanceGrid(
            double typicalDrop, double largestDrop, double[] levels, FaultConstants.BalanceScatter how, boolean used) {
        int kappas = how.relative().size();
        this.typicalDrop = typicalDrop;
        this.largestDrop = largestDrop;
        this.used = used;
        this.full = new double[levels.length * kappas];
        this.relative = new double[full.length];
        this.scatter = new double[full.length];
        this.weights = new double[full.length];
        for (int i = 0; i < full.length; i++) {
            full[i] = typicalDrop * Math.exp(levels[i / kappas]);
            relative[i] = how.relative().get(i % kappas);
            scatter[i] = Math.hypot(relative[i] * full[i], how.floor());
            weights[i] = how.relativeWeights().get(i % kappas);
        }
    }

    /** From the drops; one point that says nothing where there are too few. */
    static BalanceGrid of(EngineReadings readings, FaultConstants.BalanceScatter how) {
        List<Drops> drops = readings.cylinders().stream()
                .map(CylinderReadings::drops)
                .flatMap(Optional::stream)
                .toList();
        double[] means = drops.stream().mapToDouble(Drops::mean).sorted().toArray();
        boolean used = means.length >= how.fewest() && means[means.length - 1] > 0;
        if (!used) {
            return unread(how);
        }
        int upper = Math.min(means.length, Math.max(LEAST_UPPER_HALF, means.length / 2));
        double typical = Arrays.stream(means, means.length - upper, means.length)
                .average()
                .orElseThrow();
        BalanceGrid grid = new BalanceGrid(typical, means[means.length - 1], Hypotheses.array(how.levels()), how, true);
        grid.weighRepeats(drops);
        return grid;
    }

    /** For a balance test that is still to be done: any drop will do for T, κ by its prior. */
    static BalanceGrid unread(FaultConstants.BalanceScatter how) {
        return new BalanceGrid(UNKNOWN_DROP, UNKNOWN_DROP, new double[] {0}, how, false);
    }

    private void weighRepeats(List<Drops> drops) {
        double squares = drops.stream().mapToDouble(Drops::squares).sum();
        int freedom = drops.stream().mapToInt(Drops::rounds).sum() - drops.size();
        for (int i = 0; i < weights.length; i++) {
            double s = scatter[i];
            weights[i] *= Math.exp(-freedom * Math.log(s) - squares / (2 * s * s) + freedom * Math.log(scatter[0]));
        }
        double[] shares = Chance.madeToSumOne(weights);
        System.arraycopy(shares, 0, weights, 0, shares.length);
    }

    int points() {
        return full.length;
    }

    /** p(b, κ); sums 1. */
    double[] weights() {
        return weights;
    }

    /** Whether there are drops enough to be weighed. */
    boolean used() {
        return used;
    }

    /** T, rpm. */
    double typicalDrop() {
        return typicalDrop;
    }

    double largestDrop() {
        return largestDrop;
    }

    /** b, rpm. */
    double full(int point) {
        return full[point];
    }

    /** κ. */
    double relative(int point) {
        return relative[point];
    }

    /** s, rpm. */
    double scatter(int point) {
        return scatter[point];
    }
}
