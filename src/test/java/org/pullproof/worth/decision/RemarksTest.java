package org.pullproof.worth.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.pullproof.worth.decision.answer.Remark;
import org.pullproof.worth.decision.answer.Remark.Kind;
import org.pullproof.worth.decision.problem.Assumptions;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.FaultMoney;
import org.pullproof.worth.decision.problem.HiddenState;
import org.pullproof.worth.decision.problem.Node.Do;
import org.pullproof.worth.decision.problem.Node.End;
import org.pullproof.worth.decision.problem.Normal;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.problem.OwnerInputs;
import org.pullproof.worth.decision.problem.PowerNow;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.decision.problem.Purchase;
import org.pullproof.worth.decision.problem.Quote;

/** Where a question would be foolish (the table of worth.md 5), the answer says so. */
class RemarksTest {
    private static final Problem PLAIN = SmallProblem.of(SmallProblem.keep(), SmallProblem.tune("jets", 80, 5))
            .with(SmallProblem.test("look", 0, 1, 0))
            .problem();

    private static List<String> words(Problem problem, Kind kind) {
        return new Decision(1)
                .answer(problem).remarks().stream()
                        .filter(remark -> remark.kind() == kind)
                        .map(Remark::words)
                        .toList();
    }

    private static Problem with(
            OwnerInputs owner, PowerNow power, Map<String, FaultMoney> faults, List<HiddenState> states) {
        return new Problem(
                "USD",
                owner,
                PLAIN.assumptions(),
                power,
                faults,
                states,
                PLAIN.options(),
                PLAIN.tests(),
                Optional.empty());
    }

    private static Problem owning(double worth, boolean assumed, double parts, Optional<Double> price) {
        OwnerInputs owner = new OwnerInputs(
                worth,
                assumed,
                parts,
                20,
                10,
                20,
                36,
                false,
                Optional.empty(),
                price.map(asked -> new Purchase(Optional.of(asked), Optional.empty())),
                0);
        return with(owner, PLAIN.power(), PLAIN.faults(), PLAIN.states());
    }

    private static Problem powered(PowerNow power) {
        return with(PLAIN.owner(), power, PLAIN.faults(), PLAIN.states());
    }

    @Test
    void aSensibleQuestionIsNotRemarkedOn() {
        assertThat(new Decision(1).answer(PLAIN).remarks()).isEmpty();
    }

    @Test
    void aWorthThatIsAssumedOrOddIsAskedFor() {
        assertThat(words(owning(5000, true, 800, Optional.empty()), Kind.WORTH_DOUBTFUL))
                .containsExactly(
                        "What the car is worth with a sound engine is not answered; $5,000 stands for it until it is.");
        assertThat(words(owning(5000, false, 5000, Optional.empty()), Kind.WORTH_DOUBTFUL))
                .containsExactly(
                        "The car is said to be worth no more whole than in parts: check both, or break it for parts.");
        assertThat(words(owning(5000, false, 800, Optional.of(1600.0)), Kind.WORTH_DOUBTFUL))
                .containsExactly("The car is said to be worth $5,000 at an asked price of $1,600: check both.");
        assertThat(words(owning(4800, false, 800, Optional.of(1600.0)), Kind.WORTH_DOUBTFUL))
                .isEmpty();
    }

    @Test
    void aStateThatIsSureMakesTestsWorthless() {
        List<HiddenState> sure = List.of(new HiddenState(Set.of(SmallProblem.FAULT), 1), new HiddenState(Set.of(), 0));
        Problem problem = with(PLAIN.owner(), PLAIN.power(), PLAIN.faults(), sure);
        assertThat(words(problem, Kind.STATE_CERTAIN))
                .hasSize(1)
                .first()
                .asString()
                .contains("no test can change");
        assertThat(new Decision(1).answer(problem).tests())
                .allMatch(test -> test.value().value() == 0);
    }

    @Test
    void aDiscountBelowTheCureIsMarked() {
        FaultMoney cheap = new FaultMoney("worn rings", 1000, 0, new Normal(10, 0), true, true, Optional.of(1300.0));
        Problem problem = with(PLAIN.owner(), PLAIN.power(), Map.of(SmallProblem.FAULT, cheap), PLAIN.states());
        assertThat(words(problem, Kind.DISCOUNT_BELOW_CURE))
                .containsExactly(
                        "A buyer who knows would take off more than $1,000 for worn rings: its cure costs about $1,300.");
    }

    @Test
    void powerThatIsNotMeasuredOrFeltIsSaid() {
        assertThat(words(powered(new PowerNow(100, true, Optional.empty())), Kind.POWER_ESTIMATED))
                .hasSize(1);
        assertThat(words(powered(new PowerNow(100, false, Optional.of(1600.0))), Kind.HIGH_UP))
                .containsExactly("Gains are in corrected hp; at 1,600\u00a0m fewer are felt.");
    }

    /** 30 hours at nothing: from some price of an hour doing nothing is better, and that is said. */
    @Test
    void hoursThatCostNothingAreLookedAt() {
        CostLine work = CostLine.other("port work", Quote.fixed(20)).taking(30, 0);
        Option port = Option.of(
                "port",
                Option.Role.OTHER,
                new Do(List.of(work), ((Do) SmallProblem.tune("port", 0, 5).tree()).then()));
        Problem problem =
                SmallProblem.of(SmallProblem.keep(), port).valuing(20, 0).problem();
        assertThat(words(problem, Kind.HOURS_FREE))
                .hasSize(1)
                .first()
                .asString()
                .contains("look at the hours of each row; from $", "an hour it is \"drive as it is\"");
    }

    /** Two bills of 100–200–300, alike on both sides of 200: together above 400 in half of the cases, which is the limit here. */
    @Test
    void anOptionOnTheEdgeOfTheBudgetIsMarked() {
        Option work = Option.of(
                "work",
                Option.Role.OTHER,
                new Do(
                        List.of(
                                CostLine.other("one", new Quote(100, 200, 300)),
                                CostLine.other("another", new Quote(100, 200, 300))),
                        End.of(Ending.KEEP)));
        SmallProblem small = SmallProblem.of(SmallProblem.keep(), work);
        assertThat(words(limited(small.capped(400).problem(), 0.5), Kind.ON_THE_EDGE))
                .containsExactly("\"work\" is on the edge of the budget.");
        assertThat(words(limited(small.capped(420).problem(), 0.5), Kind.ON_THE_EDGE))
                .isEmpty();
    }

    private static Problem limited(Problem problem, double limit) {
        Assumptions usual = problem.assumptions();
        Assumptions limited = new Assumptions(
                usual.resaleShare(),
                usual.saleFriction(),
                limit,
                usual.baseHazard(),
                usual.hardPullFactor(),
                usual.failureCost(),
                usual.overruns(),
                usual.smallestShare(),
                usual.changeSpread());
        return new Problem(
                "USD",
                problem.owner(),
                limited,
                problem.power(),
                problem.faults(),
                problem.states(),
                problem.options(),
                problem.tests(),
                Optional.empty());
    }
}
