package org.pullproof.worth.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.pullproof.car.Access;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.health.faults.FaultConstants.WholeEngineTest;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.health.nexttest.NextTest;
import org.pullproof.worth.TestPrice;
import org.pullproof.worth.TestPrices;
import org.pullproof.worth.decision.problem.Likelihood;
import org.pullproof.worth.decision.problem.MoneyTest;
import org.pullproof.worth.decision.problem.MoneyTest.Damage;
import org.pullproof.worth.trade.Catalogue;

/** The tests that the owner may do now and has not done: on the cylinders most suspected, on all, and on the whole engine. */
final class TestList {
    private static final double SUSPECTED = 0.8;
    private static final int MOST_CYLINDERS = 2;
    private static final List<TestKind> OF_ONE = List.of(
            TestKind.COIL_SWAP,
            TestKind.LASH,
            TestKind.COMPRESSION_WET,
            TestKind.LEAKDOWN,
            TestKind.BORESCOPE,
            TestKind.RUNNING_COMPRESSION);
    private static final List<TestKind> OF_ALL = List.of(TestKind.BALANCE, TestKind.COMPRESSION_DRY, TestKind.LEAKDOWN);
    private static final Set<String> RUINOUS = Set.of("gasket-coolant", "bottom-end");

    private final Catalogue catalogue;
    private final TestPrices prices;
    private final EngineStates states;
    private final Permitted permitted;
    private final int cylinders;

    /**
     * What may be done and with what.
     *
     * @param access what the owner permits; if not told, everything is weighed
     * @param everRead tests whose tool is at hand
     * @param runs whether the engine runs and may run
     */
    record Permitted(Optional<Access> access, Set<TestKind> everRead, boolean runs) {
        private static final Set<TestKind> NEED_A_RUNNING_ENGINE = Set.of(
                TestKind.COIL_SWAP,
                TestKind.BALANCE,
                TestKind.RUNNING_COMPRESSION,
                TestKind.OIL_PRESSURE,
                TestKind.OBSERVATION,
                TestKind.COOLANT_GAS,
                TestKind.VACUUM);

        boolean permits(TestKind test) {
            return access.map(level -> level.permits(test.access())).orElse(true)
                    && (runs || !NEED_A_RUNNING_ENGINE.contains(test));
        }
    }

    TestList(Catalogue catalogue, TestPrices prices, EngineStates states, Permitted permitted, int cylinders) {
        this.catalogue = catalogue;
        this.prices = prices;
        this.states = states;
        this.permitted = permitted;
        this.cylinders = cylinders;
    }

    /**
     * @param firstSteps options by the key of the test that is their first step
     */
    List<MoneyTest> of(HealthFindings health, Map<String, Set<String>> firstSteps) {
        return health.faults()
                .posterior()
                .map(posterior -> of(posterior, health, firstSteps))
                .orElse(List.of());
    }

    private List<MoneyTest> of(FaultPosterior posterior, HealthFindings health, Map<String, Set<String>> firstSteps) {
        TestTables tables = new TestTables(posterior, states);
        List<MoneyTest> tests = new ArrayList<>();
        tables.mostSuspected().stream()
                .filter(cylinder -> tables.sound(cylinder) < SUSPECTED)
                .limit(MOST_CYLINDERS)
                .forEach(cylinder -> tests.addAll(ofOne(tables, cylinder, firstSteps)));
        tests.addAll(ofAll(tables));
        tests.addAll(ofWhole(tables, posterior, health));
        return tests;
    }

    private List<MoneyTest> ofOne(TestTables tables, int cylinder, Map<String, Set<String>> firstSteps) {
        List<MoneyTest> tests = new ArrayList<>();
        OF_ONE.stream()
                .filter(permitted::permits)
                .forEach(test -> tables.ofOne(cylinder, test)
                        .ifPresent(results -> tests.add(test(
                                TestNames.name(test, List.of(cylinder), cylinders),
                                test,
                                prices.of(test.key()),
                                results,
                                false,
                                firstSteps.getOrDefault(test.key(), Set.of())))));
        return tests;
    }

    private List<MoneyTest> ofAll(TestTables tables) {
        List<Integer> all = IntStream.rangeClosed(1, cylinders).boxed().toList();
        List<MoneyTest> tests = new ArrayList<>();
        OF_ALL.stream()
                .filter(permitted::permits)
                .forEach(test -> tables.ofMany(all, test)
                        .ifPresent(results -> tests.add(test(
                                TestNames.name(test, all, cylinders),
                                test,
                                prices.of(test == TestKind.LEAKDOWN ? "leakdown-all" : test.key()),
                                results,
                                false,
                                Set.of()))));
        return tests;
    }

    private List<MoneyTest> ofWhole(TestTables tables, FaultPosterior posterior, HealthFindings health) {
        Set<TestKind> read = health.engineSigns().stream().map(Reading::test).collect(Collectors.toSet());
        List<MoneyTest> tests = new ArrayList<>();
        for (TestKind test : TestKind.values()) {
            WholeEngineTest whole = posterior.wholeEngineTests().get(test.key());
            if (whole != null
                    && permitted.permits(test)
                    && !read.contains(test)
                    && states.faults().contains(whole.fault())) {
                tests.add(test(
                        TestNames.ofWholeEngine(test),
                        test,
                        prices.of(test.key()),
                        tables.ofWhole(whole),
                        decidesWhetherToRun(whole.fault()),
                        Set.of()));
            }
        }
        return tests;
    }

    private boolean decidesWhetherToRun(String fault) {
        return RUINOUS.contains(fault) && states.chanceOfAny(Set.of(fault)) >= catalogue.number("chance.gate");
    }

    private MoneyTest test(
            String name, TestKind test, TestPrice price, List<Likelihood> results, boolean gate, Set<String> firstOf) {
        boolean again = permitted.everRead().contains(test);
        double dollars = (again ? price.again() : price.first()).value();
        return new MoneyTest(
                name,
                price.minutes(cylinders),
                catalogue.number("rate.dollar") * dollars,
                damage(test),
                results,
                gate,
                firstOf);
    }

    private Optional<Damage> damage(TestKind test) {
        boolean plugsWereOut = permitted.everRead().stream().anyMatch(read -> read.access() == Access.PLUGS_OUT);
        return test.access() == Access.PLUGS_OUT && !plugsWereOut
                ? Optional.of(new Damage(
                        catalogue.number("damage.thread.chance"),
                        catalogue.number("rate.dollar") * catalogue.number("damage.thread.cost")))
                : Optional.empty();
    }

    /** What <i>Health</i> proposes next, under the name it has here. */
    Optional<String> healthNext(HealthFindings health) {
        return health.faults().nextTests().stream().findFirst().map(proposed -> {
            NextTest next = proposed.test();
            return TestNames.name(next.test(), next.cylinders(), cylinders);
        });
    }
}
