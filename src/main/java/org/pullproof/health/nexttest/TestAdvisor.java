package org.pullproof.health.nexttest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.pullproof.health.TestKind;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.health.faults.Outcomes;
import org.pullproof.health.faults.Pair;
import org.pullproof.health.faults.TestOutcomes;

/**
 * Chooses the next test (section 7 of the method): first for each cylinder called faulty, then one for all others.
 *
 * <p>For a faulty cylinder: the test with the largest net value, if that is worth proposing; else, where neither a fault nor its
 * family is settled, the one that tells most; else none. For the others: the test done on all of them with the largest net value; if
 * there is none anywhere and it is not settled whether the engine is sound, the one that tells most a minute.
 */
public final class TestAdvisor {
    private static final List<TestKind> OF_ONE = List.of(
            TestKind.LASH,
            TestKind.COIL_SWAP,
            TestKind.BALANCE,
            TestKind.PLUG,
            TestKind.COMPRESSION_DRY,
            TestKind.COMPRESSION_WET,
            TestKind.LEAKDOWN,
            TestKind.BORESCOPE,
            TestKind.RUNNING_COMPRESSION,
            TestKind.COOLANT_GAS);

    private static final List<TestKind> OF_ALL = List.of(
            TestKind.BALANCE, TestKind.PLUG, TestKind.COMPRESSION_DRY, TestKind.COMPRESSION_WET, TestKind.LEAKDOWN);

    private final FaultPosterior posterior;
    private final FaultConstants constants;
    private final TestOutcomes outcomes;
    private final TestCosts costs;
    private final Circumstances circumstances;
    private final Decision decision;
    private final Map<String, Optional<Weighed>> weighed = new HashMap<>();

    /** What one test on one cylinder tells and is worth. */
    private record Weighed(double bits, double value) {}

    public TestAdvisor(
            FaultPosterior posterior, FaultConstants constants, TestCosts costs, Circumstances circumstances) {
        this.posterior = posterior;
        this.constants = constants;
        this.outcomes = new TestOutcomes(posterior);
        this.costs = costs;
        this.circumstances = circumstances;
        this.decision = new Decision(constants.furtherTests());
    }

    /**
     * @param settled whether it is settled that the engine is sound, or that it is not
     */
    public List<NextTest> proposals(boolean settled) {
        List<NextTest> proposals = new ArrayList<>(ofFaulty());
        ofTheOthers().ifPresent(proposals::add);
        if (proposals.isEmpty() && !settled) {
            tellsMostAMinute().ifPresent(proposals::add);
        }
        return proposals;
    }

    /** V of a test on one cylinder, in money; empty where it had it. */
    public OptionalDouble value(int cylinder, TestKind test) {
        return weigh(cylinder, test).stream().mapToDouble(Weighed::value).findFirst();
    }

    /** Bits and money of a test on one cylinder, empty where it had it. */
    private Optional<Weighed> weigh(int cylinder, TestKind test) {
        return weighed.computeIfAbsent(
                cylinder + " " + test, key -> outcomes.of(cylinder, test).map(this::weigh));
    }

    private Weighed weigh(Outcomes found) {
        return new Weighed(found.information(), decision.value(found));
    }

    private List<Integer> cylinders(boolean calledFaulty) {
        double called = constants.verdicts().called();
        return posterior.readings().cylinders().stream()
                .map(one -> one.number())
                .filter(number -> posterior.p(number, Fault.SOUND) < called == calledFaulty)
                .toList();
    }

    /** A pair is taken once, on the cylinder where the test is worth more. */
    private List<NextTest> ofFaulty() {
        Map<Integer, NextTest> byCylinder = new TreeMap<>();
        cylinders(true).forEach(cylinder -> ofOne(cylinder).ifPresent(test -> byCylinder.put(cylinder, test)));
        posterior.pairs().forEach((pair, p) -> {
            if (p >= constants.verdicts().called()) {
                leaveOne(pair, byCylinder);
            }
        });
        return List.copyOf(byCylinder.values());
    }

    private static void leaveOne(Pair pair, Map<Integer, NextTest> byCylinder) {
        NextTest one = byCylinder.get(pair.one());
        NextTest other = byCylinder.get(pair.other());
        if (one != null && other != null) {
            byCylinder.remove(one.value() >= other.value() ? pair.other() : pair.one());
        }
    }

    private Optional<NextTest> ofOne(int cylinder) {
        List<NextTest> permitted = OF_ONE.stream()
                .filter(circumstances::permits)
                .flatMap(test -> weigh(cylinder, test).map(found -> proposal(cylinder, test, found)).stream())
                .toList();
        Optional<NextTest> worthwhile = permitted.stream()
                .filter(test -> net(test) > constants.furtherTests().worthwhile())
                .max(Comparator.comparingDouble(this::net));
        return worthwhile.or(() -> settled(cylinder)
                ? Optional.empty()
                : permitted.stream()
                        .max(Comparator.comparingDouble(NextTest::bits))
                        .map(test -> because(test, NextTest.Reason.TELLS_MOST)));
    }

    private NextTest proposal(int cylinder, TestKind test, Weighed found) {
        return new NextTest(
                test,
                List.of(cylinder),
                NextTest.Reason.WORTH_ITS_COST,
                found.bits(),
                found.value(),
                cost(test, false));
    }

    private TestCost cost(TestKind test, boolean all) {
        return costs.of(
                test,
                posterior.readings().cylinders().size(),
                all,
                circumstances.everRead().contains(test));
    }

    private static NextTest because(NextTest test, NextTest.Reason reason) {
        return new NextTest(test.test(), test.cylinders(), reason, test.bits(), test.value(), test.cost());
    }

    /** V less cost and own time. */
    private double net(NextTest test) {
        return test.value() - test.cost().dollars() - test.cost().minutes() * circumstances.dollarsAMinute();
    }

    /** Whether one fault, or one family, is as good as certain. */
    private boolean settled(int cylinder) {
        Map<Fault.Family, Double> families = new EnumMap<>(Fault.Family.class);
        posterior
                .candidates(cylinder)
                .forEach((candidate, p) -> families.merge(candidate.fault().family(), p, Double::sum));
        return families.values().stream()
                .anyMatch(p -> p >= constants.verdicts().settled());
    }

    private Optional<NextTest> ofTheOthers() {
        List<Integer> others = cylinders(false);
        double most = others.stream()
                .mapToDouble(cylinder -> decision.valueOfCertainty(posterior.candidates(cylinder)))
                .sum();
        if (most <= constants.furtherTests().worthwhile()) {
            return Optional.empty();
        }
        return ofAll(others).stream()
                .filter(test -> net(test) > constants.furtherTests().worthwhile())
                .max(Comparator.comparingDouble(this::net));
    }

    private List<NextTest> ofAll(List<Integer> cylinders) {
        return OF_ALL.stream()
                .filter(circumstances::permits)
                .flatMap(test -> ofAll(cylinders, test).stream())
                .toList();
    }

    private Optional<NextTest> ofAll(List<Integer> cylinders, TestKind test) {
        List<Integer> without = new ArrayList<>();
        double bits = 0;
        double value = 0;
        for (int cylinder : cylinders) {
            Optional<Weighed> found = weigh(cylinder, test);
            if (found.isPresent()) {
                without.add(cylinder);
                bits += found.get().bits();
                value += found.get().value();
            }
        }
        return without.isEmpty()
                ? Optional.empty()
                : Optional.of(new NextTest(
                        test, without, NextTest.Reason.WORTH_ITS_COST, bits, value, cost(test, without.size() > 1)));
    }

    private Optional<NextTest> tellsMostAMinute() {
        List<Integer> all = posterior.readings().cylinders().stream()
                .map(one -> one.number())
                .toList();
        return ofAll(all).stream()
                .max(Comparator.comparingDouble(
                        test -> test.bits() / Math.max(1, test.cost().minutes())))
                .map(test -> because(test, NextTest.Reason.SETTLES_MOST));
    }
}
