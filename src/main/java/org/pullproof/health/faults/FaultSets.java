package org.pullproof.health.faults;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Chances of complete sets of faults.
 *
 * <pre>
 *  p(F, S) = Σ W_S Π_{i∈F} prior_f E_if/S_i · Π_{i∉F} prior_sound E_i,sound/S_i / Z
 * </pre>
 *
 * <p>With a pair: × Q_ij, both cylinders left out of the products.
 */
final class FaultSets {
    /** A fault below this is not tried in a set. */
    private static final double LEAST = 1e-4;

    private final Joint joint;
    private final int cylinders;
    private final Map<String, double[]> shares = new HashMap<>();

    FaultSets(Joint joint, int cylinders) {
        this.joint = joint;
        this.cylinders = cylinders;
    }

    private double[] share(int cylinder, Fault fault) {
        return shares.computeIfAbsent(cylinder + " " + fault.key(), key -> joint.share(cylinder, fault));
    }

    double p(FaultSet set) {
        double[] product = joint.weight(set.state());
        set.pair().ifPresent(pair -> multiply(product, joint.ofPair(pair)));
        for (int cylinder = 1; cylinder <= cylinders; cylinder++) {
            int number = cylinder;
            if (set.pair().filter(pair -> pair.has(number)).isEmpty()) {
                multiply(product, share(cylinder, set.faults().getOrDefault(cylinder, Fault.SOUND)));
            }
        }
        return Chance.sum(product);
    }

    private static void multiply(double[] product, double[] factor) {
        for (int i = 0; i < product.length; i++) {
            product[i] *= factor[i];
        }
    }

    /** p that no cylinder has that fault. */
    double nowhere(Fault fault) {
        double sum = 0;
        for (EngineState state : EngineState.values()) {
            sum += nowhere(state, Optional.empty(), fault);
            for (Pair pair : joint.pairs()) {
                sum += nowhere(state, Optional.of(pair), fault);
            }
        }
        return sum;
    }

    private double nowhere(EngineState state, Optional<Pair> pair, Fault fault) {
        double[] product = joint.weight(state);
        pair.ifPresent(leaking -> multiply(product, joint.ofPair(leaking)));
        for (int cylinder = 1; cylinder <= cylinders; cylinder++) {
            int number = cylinder;
            if (pair.filter(leaking -> leaking.has(number)).isEmpty()) {
                double[] share = share(cylinder, fault);
                for (int i = 0; i < product.length; i++) {
                    product[i] *= 1 - share[i];
                }
            }
        }
        return Chance.sum(product);
    }

    /** Greedy: sets are tried in the order of what they would weigh if cylinders were independent. */
    List<FaultSet.Likely> likeliest(FaultPosterior posterior, double share, int most) {
        List<FaultSet.Likely> found = new ArrayList<>();
        double sum = 0;
        for (FaultSet set : tried(posterior, most)) {
            if (sum >= share) {
                break;
            }
            double p = p(set);
            sum += p;
            found.add(new FaultSet.Likely(set, p));
        }
        found.sort(Comparator.comparingDouble(FaultSet.Likely::p).reversed());
        return found;
    }

    /** A set as it is being built, with its weight were cylinders independent. */
    private record Sketch(Map<Integer, Fault> faults, double weight) {
        Sketch with(int cylinder, Fault fault, double p) {
            Map<Integer, Fault> more = new TreeMap<>(faults);
            if (fault != Fault.SOUND) {
                more.put(cylinder, fault);
            }
            return new Sketch(more, weight * p);
        }
    }

    private List<FaultSet> tried(FaultPosterior posterior, int most) {
        Map<FaultSet, Double> sketches = new LinkedHashMap<>();
        List<Optional<Pair>> pairs = new ArrayList<>(List.of(Optional.empty()));
        joint.pairs().forEach(pair -> pairs.add(Optional.of(pair)));
        for (Optional<Pair> pair : pairs) {
            double ofPair = pair.map(joint::p)
                    .orElseGet(() ->
                            1 - joint.pairs().stream().mapToDouble(joint::p).sum());
            for (Sketch sketch : ofPair < LEAST ? List.<Sketch>of() : sketches(posterior, pair, most)) {
                for (EngineState state : EngineState.values()) {
                    sketches.put(
                            new FaultSet(state, sketch.faults(), pair), ofPair * sketch.weight() * posterior.p(state));
                }
            }
        }
        return sketches.entrySet().stream()
                .sorted(Map.Entry.<FaultSet, Double>comparingByValue().reversed())
                .limit(most)
                .map(Map.Entry::getKey)
                .toList();
    }

    private List<Sketch> sketches(FaultPosterior posterior, Optional<Pair> pair, int most) {
        List<Sketch> sketches = List.of(new Sketch(Map.of(), 1));
        for (int cylinder = 1; cylinder <= cylinders; cylinder++) {
            int number = cylinder;
            if (pair.filter(leaking -> leaking.has(number)).isEmpty()) {
                sketches = sketches.stream()
                        .flatMap(sketch -> Fault.ofOneCylinder().stream()
                                .filter(fault -> posterior.p(number, fault) > LEAST)
                                .map(fault -> sketch.with(number, fault, posterior.p(number, fault))))
                        .sorted(Comparator.comparingDouble(Sketch::weight).reversed())
                        .limit(most)
                        .toList();
            }
        }
        return sketches;
    }
}
