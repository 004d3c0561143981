package org.pullproof.health.faults;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pullproof.health.faults.CylinderLikelihood.Table;
import org.pullproof.health.faults.Hypotheses.Branch;

/**
 * One cylinder recomputed while all others, the grids and the scales are held (section 7 of the method).
 *
 * <pre>
 *  p′(f)    = prior_f Σ W_i/S_i · E′_if/Z
 *  p′(pair) = p_pair Σ W/(S_i S_j) Σ_x p(x) C′_i C_j B′_i B_j/Z
 * </pre>
 *
 * <p>With the readings unchanged p′ = p. What multiplies the cylinder's own compression part is summed over (b, κ) once: a weight by
 * cell for each branch.
 */
final class CylinderAlone {
    private final Joint joint;
    private final int cylinder;
    private final double[] rest;
    private final Map<Pair, double[]> restOfPairs = new LinkedHashMap<>();
    private final List<Way> ways;

    /**
     * One branch of one candidate.
     *
     * @param byCell what multiplies the cylinder's compression part, summed over (b, κ)
     */
    record Way(Candidate candidate, Branch branch, double[] byCell) {}

    CylinderAlone(Joint joint, int cylinder) {
        this.joint = joint;
        this.cylinder = cylinder;
        this.rest = joint.without(cylinder);
        joint.pairs().stream()
                .filter(pair -> pair.has(cylinder))
                .forEach(pair -> restOfPairs.put(pair, joint.withoutBoth(pair)));
        this.ways = ways(joint.likelihood(cylinder).lefts());
    }

    private List<Way> ways(Table lefts) {
        List<Way> found = new ArrayList<>();
        Map<Integer, double[]> byLeft = new LinkedHashMap<>();
        for (Branch branch : joint.likelihoods().branches()) {
            if (branch.fault() == Fault.GASKET_NEIGHBOUR) {
                restOfPairs.forEach((pair, both) -> found.add(ofPair(pair, both, branch, lefts)));
            } else {
                double[] byCell = byLeft.computeIfAbsent(branch.left(), left -> summed(rest, lefts.row(left)));
                found.add(new Way(Candidate.of(branch.fault()), branch, byCell));
            }
        }
        return found;
    }

    private Way ofPair(Pair pair, double[] both, Branch branch, Table lefts) {
        int neighbour = pair.beside(cylinder);
        double[] ofNeighbour = joint.weighedCompression(neighbour, branch);
        double[] points = product(
                lefts.row(branch.left()), joint.likelihood(neighbour).lefts().row(branch.left()));
        return new Way(
                Candidate.withNeighbour(neighbour), branch, product(ofNeighbour, summed(both, points)));
    }

    private static double[] product(double[] a, double[] b) {
        double[] product = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            product[i] = a[i] * b[i];
        }
        return product;
    }

    /** Σ over (b, κ), by cell. */
    private static double[] summed(double[] byCellAndPoint, double[] byPoint) {
        int points = byPoint.length;
        double[] byCell = new double[byCellAndPoint.length / points];
        for (int cell = 0; cell < byCell.length; cell++) {
            double sum = 0;
            for (int point = 0; point < points; point++) {
                sum += byCellAndPoint[cell * points + point] * byPoint[point];
            }
            byCell[cell] = sum;
        }
        return byCell;
    }

    /** p of every candidate, by the readings as they are. */
    Map<Candidate, Double> chances() {
        return chances(joint.likelihood(cylinder));
    }

    /** p′ of every candidate, with another likelihood of this cylinder on the same grids; idle parts unchanged. */
    Map<Candidate, Double> chances(CylinderLikelihood changed) {
        Map<Candidate, Double> chances = new LinkedHashMap<>();
        Grid grid = joint.likelihoods().grid();
        for (Way way : ways) {
            add(chances, way, changed, Chance.dot(changed.compression(way.branch(), grid), way.byCell()));
        }
        return chances;
    }

    private void add(Map<Candidate, Double> chances, Way way, CylinderLikelihood changed, double sum) {
        Fault fault = way.branch().fault();
        boolean alone = fault != Fault.GASKET_NEIGHBOUR;
        double prior = alone ? joint.prior().of(cylinder, fault) * way.branch().weight() : 1;
        chances.merge(way.candidate(), prior * changed.factor(fault) * sum, Double::sum);
    }
}
