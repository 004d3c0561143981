package org.pullproof.worth.question;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.pullproof.health.TestKind;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultConstants.WholeEngineTest;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.health.faults.FaultSet;
import org.pullproof.health.faults.Outcomes;
import org.pullproof.health.faults.TestOutcomes;
import org.pullproof.worth.decision.problem.Likelihood;

/**
 * How likely each state makes each result of a test, averaged inside the merged states:
 *
 * <pre> P(e | s) = Σ_{x∈s} p(x) P(e | x) / Σ_{x∈s} p(x)</pre>
 *
 * <p>The chances are those of <i>Health</i>, given the fault of the cylinder (worth.md 1; own derivation). A state without accounts
 * takes the average over all.
 */
final class TestTables {
    private final FaultPosterior posterior;
    private final TestOutcomes outcomes;
    private final EngineStates states;

    TestTables(FaultPosterior posterior, EngineStates states) {
        this.posterior = posterior;
        this.outcomes = new TestOutcomes(posterior);
        this.states = states;
    }

    /** Cylinders in the order of how likely they are at fault. */
    List<Integer> mostSuspected() {
        return IntStream.rangeClosed(1, posterior.readings().cylinders().size())
                .boxed()
                .sorted(Comparator.comparingDouble(cylinder -> posterior.p(cylinder, Fault.SOUND)))
                .toList();
    }

    /** Chance that a cylinder is sound. */
    double sound(int cylinder) {
        return posterior.p(cylinder, Fault.SOUND);
    }

    /** Results of a test on one cylinder; empty where it had it. */
    Optional<List<Likelihood>> ofOne(int cylinder, TestKind test) {
        return outcomes.of(cylinder, test).map(found -> {
            List<Likelihood> results = new ArrayList<>();
            TestNames.results(test, found.count())
                    .forEach((name, classes) -> results.add(new Likelihood(
                            name, byState(account -> chance(found, fault(account, cylinder), classes)))));
            return results;
        });
    }

    /** What one account makes of a result. */
    private interface ByAccount {
        double chance(FaultSet account);
    }

    private List<Double> byState(ByAccount result) {
        double[] sums = new double[2];
        states.states()
                .forEach(state -> state.accounts().forEach(account -> {
                    sums[0] += account.p() * result.chance(account.set());
                    sums[1] += account.p();
                }));
        return states.states().stream()
                .map(state -> average(state, result, sums[1] == 0 ? 0 : sums[0] / sums[1]))
                .toList();
    }

    private static double average(EngineStates.State state, ByAccount result, double overAll) {
        double weight = 0;
        double sum = 0;
        for (FaultSet.Likely account : state.accounts()) {
            weight += account.p();
            sum += account.p() * result.chance(account.set());
        }
        return Math.min(1, weight == 0 ? overAll : sum / weight);
    }

    private static Fault fault(FaultSet account, int cylinder) {
        return account.pair().filter(pair -> pair.has(cylinder)).isPresent()
                ? Fault.GASKET_NEIGHBOUR
                : account.faults().getOrDefault(cylinder, Fault.SOUND);
    }

    /** P(one of these classes | fault). */
    private static double chance(Outcomes found, Fault fault, List<Integer> classes) {
        for (int f = 0; f < found.candidates().size(); f++) {
            if (found.candidates().get(f).fault() == fault) {
                List<Double> given = found.given().get(f);
                return classes.stream().mapToDouble(given::get).sum();
            }
        }
        throw new IllegalArgumentException(fault.key() + " is no candidate of this cylinder");
    }

    /**
     * Two results of a test on many cylinders: whether one or more look faulty. A class looks faulty where a fault makes it likelier
     * than a sound cylinder does.
     */
    Optional<List<Likelihood>> ofMany(List<Integer> cylinders, TestKind test) {
        List<Clean> read = cylinders.stream()
                .flatMap(cylinder -> outcomes.of(cylinder, test).map(found -> Clean.of(cylinder, found)).stream())
                .toList();
        if (read.isEmpty()) {
            return Optional.empty();
        }
        List<Double> clean = byState(account -> read.stream()
                .mapToDouble(one -> one.chance(fault(account, one.cylinder())))
                .reduce(1, (a, b) -> a * b));
        List<Double> not = clean.stream().map(chance -> 1 - chance).toList();
        return Optional.of(
                List.of(new Likelihood("one or more stand out", not), new Likelihood("none stands out", clean)));
    }

    /**
     * One cylinder of many.
     *
     * @param chances that it looks sound, by what is wrong with it
     */
    private record Clean(int cylinder, Map<Fault, Double> chances) {
        static Clean of(int cylinder, Outcomes found) {
            List<Integer> classes = IntStream.range(0, found.count())
                    .filter(outcome -> bySound(found, outcome) >= byFault(found, outcome))
                    .boxed()
                    .toList();
            Map<Fault, Double> chances = new EnumMap<>(Fault.class);
            found.candidates()
                    .forEach(candidate -> chances.computeIfAbsent(
                            candidate.fault(), fault -> TestTables.chance(found, fault, classes)));
            return new Clean(cylinder, chances);
        }

        double chance(Fault fault) {
            Double chance = chances.get(fault);
            if (chance == null) {
                throw new IllegalArgumentException(fault.key() + " is no candidate of cylinder " + cylinder);
            }
            return chance;
        }

        private static double bySound(Outcomes found, int outcome) {
            return TestTables.chance(found, Fault.SOUND, List.of(outcome));
        }

        private static double byFault(Outcomes found, int outcome) {
            double weight = 0;
            double sum = 0;
            for (int f = 0; f < found.candidates().size(); f++) {
                if (found.candidates().get(f).fault() != Fault.SOUND) {
                    weight += found.before().get(f);
                    sum += found.before().get(f) * found.given().get(f).get(outcome);
                }
            }
            return weight == 0 ? 0 : sum / weight;
        }
    }

    /** Results of a test of the whole engine that speaks of one fault. */
    List<Likelihood> ofWhole(WholeEngineTest test) {
        List<Likelihood> results = new ArrayList<>();
        for (int i = 0; i < test.results().size(); i++) {
            int result = i;
            results.add(new Likelihood(
                    test.results().get(i),
                    states.states().stream()
                            .map(state ->
                                    (state.faults().contains(test.fault()) ? test.with() : test.without()).get(result))
                            .toList()));
        }
        return results;
    }
}
