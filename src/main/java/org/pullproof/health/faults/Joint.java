package org.pullproof.health.faults;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pullproof.health.faults.Hypotheses.Branch;

/**
 * The joint distribution over everything shared, cylinders and pairs, exactly as section 6 of the method tells.
 *
 * <pre>
 *  S_i = Σ_f prior_f E_if                                     by (R,g,w) × (b,κ)
 *  W_S = p(S,R,g) p(w) p(b,κ) Π_i S_i                         in logs, the largest subtracted
 *  Q_ij = p_pair Σ_x p(x) C_i C_j B_i B_j/(S_i S_j)           at most one pair
 *  Z = Σ_S Σ W_S (1 + Σ Q)
 * </pre>
 *
 * <p>E_if of a branch is a product of a part over (R,g,w) and a part over (b,κ), so branches with the same idle share are added first
 * and one small matrix product a cylinder is left.
 */
final class Joint {
    private final Likelihoods likelihoods;
    private final Prior prior;
    private final List<Pair> pairs;
    private final int cells;
    private final int points;
    private final List<Branch> branches;
    private final List<Branch> pairBranches;
    private final List<CylinderLikelihood> cylinders;
    private final List<List<double[]>> compressions = new ArrayList<>();
    private final List<double[]> sums = new ArrayList<>();
    private final Map<EngineState, double[]> weights = new EnumMap<>(EngineState.class);
    private final Map<Pair, double[]> pairRatios = new LinkedHashMap<>();
    private final double[] all;
    private final double[] onePlusPairs;
    private final double total;

    Joint(EngineReadings readings, Likelihoods likelihoods, Prior prior) {
        this.likelihoods = likelihoods;
        this.prior = prior;
        this.pairs = readings.pairs();
        this.cells = likelihoods.grid().cells();
        this.points = likelihoods.balance().points();
        this.branches = likelihoods.branches();
        this.pairBranches = branches.stream()
                .filter(branch -> branch.fault() == Fault.GASKET_NEIGHBOUR)
                .toList();
        this.cylinders = readings.cylinders().stream().map(likelihoods::of).toList();
        for (int i = 0; i < cylinders.size(); i++) {
            compressions.add(compressions(cylinders.get(i)));
            sums.add(sum(i));
        }
        this.all = weigh();
        pairs.forEach(pair -> pairRatios.put(pair, ratio(pair)));
        this.onePlusPairs = onePlus(pairs);
        this.total = Chance.dot(all, onePlusPairs);
    }

    private List<double[]> compressions(CylinderLikelihood cylinder) {
        return branches.stream()
                .map(branch -> cylinder.compression(branch, likelihoods.grid()))
                .toList();
    }

    /** S_i. */
    private double[] sum(int i) {
        CylinderLikelihood cylinder = cylinders.get(i);
        double[][] byLeft = new double[cylinder.lefts().rows()][cells];
        for (int b = 0; b < branches.size(); b++) {
            Branch branch = branches.get(b);
            if (branch.fault() != Fault.GASKET_NEIGHBOUR) {
                double weight = prior.of(i + 1, branch.fault()) * cylinder.factor(branch.fault()) * branch.weight();
                add(byLeft[branch.left()], weight, compressions.get(i).get(b));
            }
        }
        double[] sum = new double[cells * points];
        for (int left = 0; left < byLeft.length; left++) {
            addOuter(sum, byLeft[left], cylinder.lefts().row(left));
        }
        return sum;
    }

    private static void add(double[] to, double weight, double[] values) {
        for (int i = 0; i < to.length; i++) {
            to[i] += weight * values[i];
        }
    }

    private static void addOuter(double[] to, double[] byCell, double[] byPoint) {
        int at = 0;
        for (double cell : byCell) {
            for (double point : byPoint) {
                to[at++] += cell * point;
            }
        }
    }

    /** W_S of every state; returns their sum W. */
    private double[] weigh() {
        double[] product = products();
        double[] ofPoints = likelihoods.balance().weights();
        double[] sum = new double[product.length];
        for (EngineState state : EngineState.values()) {
            double[] ofCells = likelihoods.grid().weights(state);
            double[] weight = new double[product.length];
            for (int i = 0; i < weight.length; i++) {
                weight[i] = prior.of(state) * ofCells[i / points] * ofPoints[i % points] * product[i];
                sum[i] += weight[i];
            }
            weights.put(state, weight);
        }
        return sum;
    }

    /** Π_i S_i, through logarithms, over the largest. */
    private double[] products() {
        double[] logs = new double[cells * points];
        for (double[] sum : sums) {
            for (int i = 0; i < logs.length; i++) {
                logs[i] += Math.log(sum[i]);
            }
        }
        double largest = Arrays.stream(logs).max().orElseThrow();
        for (int i = 0; i < logs.length; i++) {
            logs[i] = Math.exp(logs[i] - largest);
        }
        return logs;
    }

    /** Q of one pair. */
    private double[] ratio(Pair pair) {
        int i = pair.one() - 1;
        int j = pair.other() - 1;
        double[] ratio = new double[cells * points];
        double before = prior.of(pair) * pairFactor(i) * pairFactor(j);
        for (Branch branch : pairBranches) {
            double[] both = times(compression(i, branch), compression(j, branch), before * branch.weight());
            double[] left = times(
                    cylinders.get(i).lefts().row(branch.left()),
                    cylinders.get(j).lefts().row(branch.left()),
                    1);
            addOuter(ratio, both, left);
        }
        for (int k = 0; k < ratio.length; k++) {
            ratio[k] /= sums.get(i)[k] * sums.get(j)[k];
        }
        return ratio;
    }

    private double pairFactor(int i) {
        return cylinders.get(i).factor(Fault.GASKET_NEIGHBOUR);
    }

    private double[] compression(int i, Branch branch) {
        return compressions.get(i).get(branches.indexOf(branch));
    }

    private static double[] times(double[] a, double[] b, double factor) {
        double[] product = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            product[i] = factor * a[i] * b[i];
        }
        return product;
    }

    /** 1 + Σ Q over some pairs. */
    private double[] onePlus(List<Pair> some) {
        double[] sum = new double[cells * points];
        Arrays.fill(sum, 1);
        for (Pair pair : some) {
            double[] ratio = pairRatio(pair);
            for (int i = 0; i < sum.length; i++) {
                sum[i] += ratio[i];
            }
        }
        return sum;
    }

    private double[] pairRatio(Pair pair) {
        double[] ratio = pairRatios.get(pair);
        if (ratio == null) {
            throw new IllegalArgumentException(pair + " is no pair of neighbours of this engine");
        }
        return ratio;
    }

    double p(EngineState state) {
        double[] weight = weights.getOrDefault(state, new double[0]);
        return Chance.dot(weight, onePlusPairs) / total;
    }

    double p(Pair pair) {
        return Chance.dot(all, pairRatio(pair)) / total;
    }

    /** W_i/S_i/Z with W_i = W (1 + Σ Q of pairs without i): everything but cylinder i, held. */
    double[] without(int cylinder) {
        double[] rest =
                onePlus(pairs.stream().filter(pair -> !pair.has(cylinder)).toList());
        double[] sum = sums.get(cylinder - 1);
        for (int i = 0; i < rest.length; i++) {
            rest[i] *= all[i] / (sum[i] * total);
        }
        return rest;
    }

    /** W/(S_i S_j)/Z, times the prior and what is fixed of the neighbour, by cell and point. */
    double[] withoutBoth(Pair pair) {
        double before = prior.of(pair) / total;
        double[] one = sums.get(pair.one() - 1);
        double[] other = sums.get(pair.other() - 1);
        double[] rest = new double[all.length];
        for (int k = 0; k < rest.length; k++) {
            rest[k] = before * all[k] / (one[k] * other[k]);
        }
        return rest;
    }

    /** C of a cylinder and branch times p(x) and the cylinder's factor, by cell. */
    double[] weighedCompression(int cylinder, Branch branch) {
        double factor = pairFactor(cylinder - 1) * branch.weight();
        return Arrays.stream(compression(cylinder - 1, branch))
                .map(value -> factor * value)
                .toArray();
    }

    /** prior_f E_if/S_i of one fault, by cell and point. */
    double[] share(int cylinder, Fault fault) {
        int i = cylinder - 1;
        CylinderLikelihood likelihood = cylinders.get(i);
        double[] share = new double[cells * points];
        for (int b = 0; b < branches.size(); b++) {
            Branch branch = branches.get(b);
            if (branch.fault() == fault) {
                double weight = prior.of(cylinder, fault) * likelihood.factor(fault) * branch.weight();
                double[] weighed = new double[cells];
                add(weighed, weight, compressions.get(i).get(b));
                addOuter(share, weighed, likelihood.lefts().row(branch.left()));
            }
        }
        for (int k = 0; k < share.length; k++) {
            share[k] /= sums.get(i)[k];
        }
        return share;
    }

    /** W_S/Z, by cell and point. */
    double[] weight(EngineState state) {
        return Arrays.stream(weights.getOrDefault(state, all))
                .map(weight -> weight / total)
                .toArray();
    }

    /** Q of a pair, by cell and point. */
    double[] ofPair(Pair pair) {
        return pairRatio(pair).clone();
    }

    CylinderLikelihood likelihood(int cylinder) {
        return cylinders.get(cylinder - 1);
    }

    Likelihoods likelihoods() {
        return likelihoods;
    }

    Prior prior() {
        return prior;
    }

    List<Pair> pairs() {
        return pairs;
    }
}
