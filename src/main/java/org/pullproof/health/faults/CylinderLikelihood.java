package org.pullproof.health.faults;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntFunction;
import org.pullproof.health.faults.Hypotheses.Branch;

/**
 * How likely the readings of one cylinder are under every branch: K by chamber, A by outlet, B by idle share, and the factor of looks
 * and further tests by fault. Arrays, not to be written to.
 *
 * @param chambers K, by chamber, then place (z, R), then (g, w)
 * @param outlets A, by outlet, then place (z, R)
 * @param lefts B, by idle share, then (b, κ)
 * @param factors by fault
 */
record CylinderLikelihood(Table chambers, Table outlets, Table lefts, Map<Fault, Double> factors) {

    /** Rows of numbers, each made when first asked for: most questions need few of them. Not for several threads. */
    static final class Table {
        private final double[][] rows;
        private final IntFunction<double[]> maker;

        Table(int rows, IntFunction<double[]> maker) {
            this.rows = new double[rows][];
            this.maker = maker;
        }

        int rows() {
            return rows.length;
        }

        double[] row(int index) {
            if (rows[index] == null) {
                rows[index] = maker.apply(index);
            }
            return rows[index];
        }
    }

    double factor(Fault fault) {
        return factors.getOrDefault(fault, 1.0);
    }

    /** C = Σ_z p(z) A K of a branch, by cell (R, g, w). */
    double[] compression(Branch branch, Grid grid) {
        double[] cells = new double[grid.cells()];
        double[] k = chambers.row(branch.chamber());
        double[] a = outlets.row(branch.outlet());
        int block = grid.block();
        for (int place = 0; place < grid.leaks(); place++) {
            double weight = grid.weightOfOwn(place) * a[place];
            int to = grid.ringIndex(place) * block;
            int from = place * block;
            for (int i = 0; i < block; i++) {
                cells[to + i] += weight * k[from + i];
            }
        }
        return cells;
    }

    CylinderLikelihood withChambers(Table other) {
        return new CylinderLikelihood(other, outlets, lefts, factors);
    }

    CylinderLikelihood withOutlets(Table other) {
        return new CylinderLikelihood(chambers, other, lefts, factors);
    }

    CylinderLikelihood withLefts(Table other) {
        return new CylinderLikelihood(chambers, outlets, other, factors);
    }

    CylinderLikelihood withFactors(Map<Fault, Double> other) {
        return new CylinderLikelihood(chambers, outlets, lefts, new EnumMap<>(other));
    }
}
