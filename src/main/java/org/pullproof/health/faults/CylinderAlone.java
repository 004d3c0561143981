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

    /** One branch of one candidate; by cell what multiplies the cylinder's compression part, summed over (b, κ). */
    static final class Way {
        private final Candidate candidate;
        private final Branch branch;
        private final double[] byCell;

        Way(Candidate candidate, Branch branch, double[] byCell) {
            this.candidate = candidate;
            this.branch = branch;
            this.byCell = byCell;
        }

        Candidate candidate() {
            return candidate;
        }

        Branch branch() {
            return branch;
        }

        double[] byCell() {
            return byCell;
        }
    }

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
        return new Way(Candidate.withNeighbour(neighbour), branch, product(ofNeighbour, summed(both, points)));
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

    /** p′ of every candidate, with another likelihood of this cylinder on the same grids. */
    Map<Candidate, Double> chances(CylinderLikelihood changed) {
        return chances(changed, joint.likelihoods().grid(), waysOf(changed));
    }

    /** p′ of one candidate; only what it needs of the likelihood is computed. */
    double chance(Candidate candidate, CylinderLikelihood changed) {
        List<Way> own = waysOf(changed).stream()
                .filter(way -> way.candidate().equals(candidate))
                .toList();
        return chances(changed, joint.likelihoods().grid(), own).getOrDefault(candidate, 0.0);
    }

    private List<Way> waysOf(CylinderLikelihood changed) {
        Table before = joint.likelihood(cylinder).lefts();
        return changed.lefts().equals(before) ? ways : ways(changed.lefts());
    }

    private Map<Candidate, Double> chances(CylinderLikelihood changed, Grid grid, List<Way> some) {
        Map<Candidate, Double> chances = new LinkedHashMap<>();
        for (Way way : some) {
            double sum = Chance.dot(changed.compression(way.branch(), grid), way.byCell());
            chances.merge(way.candidate(), before(way, changed) * sum, Double::sum);
        }
        return chances;
    }

    /** Prior, weight of the branch and factor of looks: all that multiplies the sum over cells. */
    double before(Way way, CylinderLikelihood changed) {
        Fault fault = way.branch().fault();
        boolean alone = fault != Fault.GASKET_NEIGHBOUR;
        double prior = alone ? joint.prior().of(cylinder, fault) * way.branch().weight() : 1;
        return prior * changed.factor(fault);
    }

    /** p′ where oil may work in ways that no reading has told yet: every cell is parted by p(w). */
    Map<Candidate, Double> chancesWithOil(CylinderLikelihood changed, Grid withOil) {
        Grid grid = joint.likelihoods().grid();
        if (grid.cells() == withOil.cells()) {
            return chances(changed);
        }
        List<Way> parted = ways.stream()
                .map(way -> new Way(way.candidate(), way.branch(), parted(way.byCell(), withOil)))
                .toList();
        return chances(changed, withOil, parted);
    }

    private static double[] parted(double[] byCell, Grid withOil) {
        int oilWays = withOil.oilWays().size();
        double[] parts = new double[byCell.length * oilWays];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = byCell[i / oilWays] * withOil.oilWays().get(i % oilWays).weight();
        }
        return parts;
    }

    List<Way> ways() {
        return ways;
    }

    CylinderLikelihood likelihood() {
        return joint.likelihood(cylinder);
    }
}
