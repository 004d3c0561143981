package org.pullproof.worth.decision;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pullproof.worth.decision.problem.Assumptions;
import org.pullproof.worth.decision.problem.Budget;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Cure;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.FaultMoney;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.decision.problem.HiddenState;
import org.pullproof.worth.decision.problem.Likelihood;
import org.pullproof.worth.decision.problem.MoneyTest;
import org.pullproof.worth.decision.problem.Node.Do;
import org.pullproof.worth.decision.problem.Node.End;
import org.pullproof.worth.decision.problem.Normal;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.problem.Overrun;
import org.pullproof.worth.decision.problem.OwnerInputs;
import org.pullproof.worth.decision.problem.PowerNow;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.decision.problem.Purchase;
import org.pullproof.worth.decision.problem.Quote;

/**
 * A question small enough to answer by hand: a car that is worth 5,000 sound and 800 in parts, one fault that takes 1,000 off and gives
 * back 10 % of 100 hp, there with a chance of a half; nothing fails and nothing is drawn. Immutable.
 */
public record SmallProblem(
        double spent,
        Optional<Double> budget,
        Optional<Purchase> purchase,
        double valuePerHp,
        double hourPrice,
        List<Option> options,
        List<MoneyTest> tests) {
    static final String FAULT = "rings";

    public static SmallProblem of(Option... options) {
        return new SmallProblem(0, Optional.empty(), Optional.empty(), 20, 10, List.of(options), List.of());
    }

    public SmallProblem spending(double already) {
        return new SmallProblem(already, budget, purchase, valuePerHp, hourPrice, options, tests);
    }

    public SmallProblem capped(double cap) {
        return new SmallProblem(spent, Optional.of(cap), purchase, valuePerHp, hourPrice, options, tests);
    }

    public SmallProblem forSale(Optional<Double> asked, Optional<Double> least) {
        return new SmallProblem(
                spent, budget, Optional.of(new Purchase(asked, least)), valuePerHp, hourPrice, options, tests);
    }

    public SmallProblem valuing(double perHp, double perHour) {
        return new SmallProblem(spent, budget, purchase, perHp, perHour, options, tests);
    }

    public SmallProblem with(MoneyTest... more) {
        return new SmallProblem(spent, budget, purchase, valuePerHp, hourPrice, options, List.of(more));
    }

    public Problem problem() {
        Map<String, FaultMoney> faults = new LinkedHashMap<>();
        faults.put(FAULT, new FaultMoney("worn rings", 1000, 0, new Normal(10, 0), true, true, Optional.empty()));
        Assumptions usual = Assumptions.USUAL;
        Assumptions nothingFails = new Assumptions(
                usual.resaleShare(),
                usual.saleFriction(),
                usual.overLimit(),
                0,
                usual.hardPullFactor(),
                usual.failureCost(),
                usual.overruns(),
                usual.smallestShare(),
                usual.changeSpread());
        OwnerInputs owner = new OwnerInputs(
                5000,
                false,
                800,
                valuePerHp,
                hourPrice,
                20,
                36,
                false,
                budget.map(cap -> new Budget(cap, false)),
                purchase,
                spent);
        return new Problem(
                "USD",
                owner,
                nothingFails,
                PowerNow.measured(100),
                faults,
                List.of(new HiddenState(Set.of(FAULT), 0.5), new HiddenState(Set.of(), 0.5)),
                options,
                tests,
                Optional.empty());
    }

    public static Option keep() {
        return Option.of("drive as it is", Option.Role.REFERENCE, End.of(Ending.KEEP));
    }

    public static Option walk() {
        return Option.of("walk away", Option.Role.REFERENCE, End.of(Ending.WALK));
    }

    /** The question with another owner and power. */
    public static Problem changed(Problem problem, OwnerInputs owner, PowerNow power) {
        return new Problem(
                problem.currency(),
                owner,
                problem.assumptions(),
                power,
                problem.faults(),
                problem.states(),
                problem.options(),
                problem.tests(),
                problem.healthNext());
    }

    /** Buys it and keeps it. */
    public static Option buy() {
        return Option.of("buy", Option.Role.BUYS, new Do(List.of(CostLine.purchase()), End.of(Ending.KEEP)));
    }

    /** Cures the fault for one figure. */
    public static Option cure(String name, double cost) {
        CostLine line = new CostLine(
                name, CostLine.Kind.ENGINE, Quote.fixed(cost), Overrun.NONE, 0, 0, Optional.empty(), Set.of());
        return Option.of(
                name,
                Option.Role.OTHER,
                new Do(List.of(line), new End(Ending.KEEP, new Cure.Faults(Set.of(FAULT)), List.of())));
    }

    /** Gains so much power for one figure, whatever the engine has. */
    public static Option tune(String name, double cost, double percent) {
        return Option.of(
                name,
                Option.Role.OTHER,
                new Do(
                        List.of(CostLine.other(name, Quote.fixed(cost))),
                        new End(Ending.KEEP, Cure.NONE, List.of(new Gain.Expected(name, new Normal(percent, 0))))));
    }

    /** A test that finds the fault with these chances, with it and without. */
    public static MoneyTest test(String name, double money, double withFault, double without) {
        return new MoneyTest(
                name,
                0,
                money,
                Optional.empty(),
                List.of(
                        new Likelihood("found", List.of(withFault, without)),
                        new Likelihood("not found", List.of(1 - withFault, 1 - without))),
                false,
                Set.of());
    }
}
