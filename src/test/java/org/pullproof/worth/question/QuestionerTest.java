package org.pullproof.worth.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.changes.Call;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.ChangeLedger.AgainstPresent;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Setup;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.Sheets;
import org.pullproof.health.faults.Fault;
import org.pullproof.session.Judgement;
import org.pullproof.session.Session;
import org.pullproof.testing.Moneys;
import org.pullproof.testing.Tools;
import org.pullproof.units.Money;
import org.pullproof.units.Sentence;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.FaultMoney;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.decision.problem.HiddenState;
import org.pullproof.worth.decision.problem.MoneyTest;
import org.pullproof.worth.decision.problem.Node;
import org.pullproof.worth.decision.problem.Option.Role;
import org.pullproof.worth.decision.problem.Problem;

class QuestionerTest {
    private static final EngineProfile V8 = Tools.profile("v8-distributor-order-a");

    /** A V8 whose cylinder 3, of bank A, leaks; invented. */
    private static final String[] WEAK = {
        "test,cylinder,value,air",
        "compression-dry,1,158psi,",
        "compression-dry,2,162psi,",
        "compression-dry,3,82psi,",
        "compression-dry,4,160psi,",
        "compression-dry,5,157psi,",
        "compression-dry,6,163psi,",
        "compression-dry,7,159psi,",
        "compression-dry,8,156psi,",
        "compression-wet,3,84psi,",
        "oil-pressure,,24psi,"
    };

    private final Session weak = session(WEAK, Map.of());

    private static Session session(String[] lines, Map<Fact, String> facts) {
        Car car = new Car("invented", facts).with(Fact.RUNS, "yes");
        Car owned = facts.containsKey(Fact.ACCESS) ? car : car.with(Fact.ACCESS, "own-it");
        return Session.begin("invented", V8).withCar(owned).withReadings(Sheets.readings(V8, lines));
    }

    private static ChangeLedger ledger(AgainstPresent... against) {
        return new ChangeLedger(
                new Sentence(""),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                against.length == 0 ? 0 : 14,
                false,
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(against),
                Map.of());
    }

    private static Problem problem(Session session, AgainstPresent... against) {
        return Moneys.of(session, ledger(against), OptionalDouble.of(158))
                .weighing()
                .problem();
    }

    private static List<String> names(Problem problem) {
        return problem.options().stream().map(option -> option.name()).toList();
    }

    private static Node tree(Problem problem, String name) {
        return problem.options().stream()
                .filter(option -> option.name().equals(name))
                .findFirst()
                .orElseThrow()
                .tree();
    }

    private static CostLine line(Node node, String name) {
        return lines(node).stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<CostLine> lines(Node node) {
        List<CostLine> lines = new ArrayList<>();
        if (node instanceof Node.Do act) {
            lines.addAll(act.lines());
            lines.addAll(lines(act.then()));
        } else if (node instanceof Node.See see) {
            see.outcomes().forEach(outcome -> lines.addAll(lines(outcome.then())));
        } else if (node instanceof Node.Choose choose) {
            choose.choices().forEach(choice -> lines.addAll(lines(choice.then())));
        }
        return lines;
    }

    /** What the merged states say of a head is what Health says of the valves of its cylinders. */
    @Test
    void theStatesAreTheChancesOfHealthMerged() {
        Problem problem = problem(weak);
        HealthFindings health = Moneys.health(weak);
        var posterior = health.faults().posterior().orElseThrow();
        double sound = posterior.p(3, Fault.SOUND);
        double valves = posterior.p(3, Fault.EXHAUST_VALVE)
                + posterior.p(3, Fault.INTAKE_VALVE)
                + posterior.p(3, Fault.VALVE_NOT_OPENING);

        assertThat(problem.states().stream().mapToDouble(HiddenState::chance).sum())
                .isCloseTo(1, within(1e-9));
        assertThat(sound).isLessThan(0.1);
        assertThat(problem.chanceOf("head-1")).isCloseTo(valves, within(0.02));
        assertThat(problem.chanceOf("head-2")).isLessThan(0.05);
    }

    /** A crack stands beside every state where a head may come off: 10 in 100, trade, common practice, no source. */
    @Test
    void aCrackIsLookedForWhereAHeadMayComeOff() {
        assertThat(problem(weak).chanceOf("crack")).isCloseTo(0.1, within(1e-9));
        assertThat(problem(session(healthy(), Map.of())).faults()).doesNotContainKey("crack");
    }

    private static String[] healthy() {
        String[] lines = WEAK.clone();
        lines[3] = "compression-dry,3,155psi,";
        lines[9] = "compression-dry,3,156psi,";
        return lines;
    }

    @Test
    void onlyOptionsThatMakeSenseNowAreOffered() {
        assertThat(names(problem(weak)))
                .contains("lash first, then the head", "head at once", "top end", "sell as it is")
                .doesNotContain("walk away", "buy, drive as it is", "break it for parts", "another dyno day");
        assertThat(names(problem(session(healthy(), Map.of()))))
                .contains("tune on, cheap list")
                .doesNotContain("head at once", "lash first, then the head");
        assertThat(names(problem(session(WEAK, Map.of(Fact.ACCESS, "plugs-out", Fact.PRICE, "1500USD")))))
                .contains("walk away", "buy, drive as it is", "buy, fix step by step")
                .doesNotContain("sell as it is", "lash first, then the head");
    }

    @Test
    void linesOfOtherEnginesFallAway() {
        List<String> lines = lines(tree(problem(weak), "tune on, cheap list")).stream()
                .map(CostLine::name)
                .toList();

        assertThat(lines)
                .contains("plugs, wires, cap, rotor, filters, fluids", "mixture, jets")
                .doesNotContain("plugs, coil boots, filters, fluids");
    }

    @Test
    void theHeadOfTheSuspectedBankIsTheOneThatIsCured() {
        Node head = tree(problem(weak), "head at once");

        assertThat(ends(head))
                .filteredOn(end -> end.cure() instanceof org.pullproof.worth.decision.problem.Cure.Faults)
                .extracting(Node.End::cure)
                .anySatisfy(cure -> assertThat(((org.pullproof.worth.decision.problem.Cure.Faults) cure).faults())
                        .contains("head-1")
                        .doesNotContain("head-2"));
    }

    private static List<Node.End> ends(Node node) {
        List<Node.End> ends = new ArrayList<>();
        if (node instanceof Node.Do act) {
            ends.addAll(ends(act.then()));
        } else if (node instanceof Node.See see) {
            see.outcomes().forEach(outcome -> ends.addAll(ends(outcome.then())));
        } else if (node instanceof Node.Choose choose) {
            choose.choices().forEach(choice -> ends.addAll(ends(choice.then())));
        } else {
            ends.add((Node.End) node);
        }
        return ends;
    }

    /** worth.md 1: what is measured takes the place of defaults; spoiled is not used; the present setup earns nothing again. */
    @Test
    void measuredSetupsAreOfferedAndSpoiledOnesAreNot() {
        List<Setup> setups = List.of(Setup.named("now", "now"), Setup.named("seven", "7"), Setup.named("nine", "9"));
        Session session = session(healthy(), Map.of()).withSetups(setups, "now", List.of());

        Problem problem = problem(
                session,
                new AgainstPresent("seven", 1.31, 0.52, 14, Call.GAIN),
                new AgainstPresent("nine", 0.9, 0.61, 14, Call.SPOILED));

        assertThat(names(problem)).contains("go to setup 7 and stop").doesNotContain("go to setup 9 and stop");
        assertThat(ends(tree(problem, "go to setup 7 and stop")).get(0).gains())
                .containsExactly(new Gain.Measured("setup 7", 1.31, 0.52, 14));
        assertThat(ends(tree(problem, "top end")).get(0).gains())
                .contains(new Gain.Measured("setup 7", 1.31, 0.52, 14));
    }

    @Test
    void anEnteredOptionOfTheNameOfAWorkTakesThePlaceOfItsFigures() {
        Session session = weak.withMoney(new MoneyBook(List.of(), List.of(option("Lash set", 20, 40, 80))));
        CostLine lash = line(tree(problem(session), "lash first, then the head"), "lash set");

        assertThat(lash.quote().p10()).isEqualTo(20);
        assertThat(lash.quote().p90()).isEqualTo(80);
        assertThat(lash.hours()).isEqualTo(2);
    }

    @Test
    void anEnteredOptionOfAnotherNameStandsBesideTheOthers() {
        Session session = weak.withMoney(new MoneyBook(List.of(), List.of(option("cold-air duct", 60, 85, 120))));

        assertThat(names(problem(session))).contains("cold-air duct");
        assertThat(names(problem(session.withCar(session.car().with(Fact.ACCESS, "plugs-out")))))
                .contains("buy, cold-air duct");
    }

    private static Option option(String name, double low, double likely, double high) {
        return new Option(
                name,
                Money.of(low, "USD"),
                Money.of(likely, "USD"),
                Money.of(high, "USD"),
                2,
                Optional.of(new Option.Gain(0.355, 2, 3.645)),
                false);
    }

    /** Standard normal table: 5 % lie beyond 1.645 standard deviations, so 2 ± 1.645 · 1 is 0.355 to 3.645. */
    @Test
    void anEnteredGainIsNormalWithTheWidthOfItsRange() {
        assertThat(option("duct", 1, 2, 3).gain().orElseThrow().normal().sd()).isCloseTo(1, within(1e-3));
    }

    @Test
    void aWorkThatIsPaidForIsNotPaidAgain() {
        Spending paid = new Spending("Mixture, jets", Money.of(18, "USD"), LocalDate.of(2026, 6, 14));
        Session session = weak.withMoney(new MoneyBook(List.of(paid), List.of()));

        assertThat(lines(tree(problem(session), "tune on, cheap list")))
                .extracting(CostLine::name)
                .doesNotContain("mixture, jets");
    }

    /** Starting values of the method (worth.md 1): v 20, own hour 10, 36 months, week 20, no budget, not hard; W the price asked. */
    @Test
    void whatTheOwnerHasNotSaidStartsAtTheValuesOfTheMethod() {
        var owner = problem(session(WEAK, Map.of(Fact.ACCESS, "plugs-out", Fact.PRICE, "1500USD")))
                .owner();

        assertThat(owner.valuePerHp()).isEqualTo(20);
        assertThat(owner.hourPrice()).isEqualTo(10);
        assertThat(owner.monthsKept()).isEqualTo(36);
        assertThat(owner.weekWithout()).isEqualTo(20);
        assertThat(owner.budget()).isEmpty();
        assertThat(owner.hardPulls()).isFalse();
        assertThat(owner.worthSound()).isEqualTo(1500);
        assertThat(owner.worthAssumed()).isTrue();
        assertThat(owner.partsValue()).isCloseTo(225, within(1e-9));
        assertThat(owner.purchase().orElseThrow().asked()).contains(1500.0);
    }

    @Test
    void whatTheOwnerSaysCounts() {
        var owner = problem(session(
                        WEAK,
                        Map.of(
                                Fact.WORTH_SOUND, "7800USD",
                                Fact.VALUE_PER_HP, "60USD",
                                Fact.HOUR_PRICE, "0USD",
                                Fact.MONTHS, "24",
                                Fact.BUDGET, "1500USD",
                                Fact.WEEK_WITHOUT, "35USD",
                                Fact.HARD_PULLS, "yes")))
                .owner();

        assertThat(List.of(owner.worthSound(), owner.valuePerHp(), owner.hourPrice(), owner.monthsKept()))
                .containsExactly(7800.0, 60.0, 0.0, 24.0);
        assertThat(owner.budget().orElseThrow().cap()).isEqualTo(1500);
        assertThat(owner.weekWithout()).isEqualTo(35);
        assertThat(owner.hardPulls()).isTrue();
        assertThat(owner.worthAssumed()).isFalse();
    }

    /** P(positive | fault), P(positive | none) of the coolant-gas test: trade, common practice, no source. */
    @Test
    void testsOfTheWholeEngineHaveTheChancesOfHealth() {
        Problem problem = problem(weak);
        MoneyTest gas = test(problem, "coolant-gas test");

        for (int s = 0; s < problem.states().size(); s++) {
            boolean leaks = problem.states().get(s).has("gasket-coolant");
            assertThat(gas.results().get(0).chances().get(s)).isCloseTo(leaks ? 0.66 : 0.026, within(1e-9));
        }
        assertThat(gas.money()).isEqualTo(40);
        assertThat(gas.minutes()).isEqualTo(15);
    }

    private static MoneyTest test(Problem problem, String name) {
        return problem.tests().stream()
                .filter(test -> test.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theLashIsTheFirstStepOfItsOptionAndTheTestsAreOnTheWeakCylinder() {
        Problem problem = problem(weak);

        assertThat(test(problem, "lash, cylinder 3").firstStepOf()).containsExactly("lash first, then the head");
        assertThat(problem.tests()).extracting(MoneyTest::name).contains("leak-down, cylinder 3");
        assertThat(problem.tests()).extracting(MoneyTest::name).doesNotContain("compression, wet, cylinder 3");
    }

    @Test
    void whatIsNotPermittedIsNoTest() {
        Problem problem = problem(session(WEAK, Map.of(Fact.ACCESS, "start-it")));

        assertThat(problem.tests())
                .extracting(MoneyTest::name)
                .contains("coolant-gas test")
                .noneMatch(name -> name.startsWith("leak-down") || name.startsWith("lash"));
    }

    /** What a cure gives back: table of the trade for eight cylinders, common practice, no source; spread 4 with more than four. */
    @Test
    void aFaultHasTheMoneyOfItsRow() {
        FaultMoney head = problem(weak).faults().get("head-1");

        assertThat(head.restores().mean()).isEqualTo(7);
        assertThat(head.restores().sd()).isEqualTo(4);
        assertThat(head.hazard()).isEqualTo(0.08);
        assertThat(head.tired()).isTrue();
        assertThat(head.read()).isTrue();
        assertThat(head.words()).contains("bank");
    }

    @Test
    void theOwnersOwnNumbersCount() {
        Session session = weak.withJudgement(new Judgement(new TreeMap<>(
                Map.of("money.car.resale-share", 0.2, "money.work.lash.p50", 30.0, "money.rate.dollar", 2.0))));
        Problem problem = problem(session);

        assertThat(problem.assumptions().resaleShare()).isEqualTo(0.2);
        assertThat(line(tree(problem, "lash first, then the head"), "lash set")
                        .quote()
                        .p50())
                .isEqualTo(60);
    }

    @Test
    void exactlyOneOptionIsTheMeasureOfAllOthers() {
        assertThat(problem(weak).options())
                .filteredOn(option -> option.role() == Role.REFERENCE)
                .singleElement()
                .matches(option -> Set.of("stop, drive as it is").contains(option.name()));
    }
}
