package org.pullproof.worth.decision.problem;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.worth.decision.problem.CostLine.Find;
import org.pullproof.worth.decision.problem.Node.Choice;
import org.pullproof.worth.decision.problem.Node.Choose;
import org.pullproof.worth.decision.problem.Node.Do;
import org.pullproof.worth.decision.problem.Node.End;
import org.pullproof.worth.decision.problem.Node.Outcome;
import org.pullproof.worth.decision.problem.Node.See;

/** Nonsense and money machines are refused, with the field and what would be right (worth.md 5). */
class RefusalsTest {
    private static final Map<String, FaultMoney> FAULTS =
            Map.of("rings", new FaultMoney("worn rings", 900, 0.08, new Normal(5, 4), true, true, Optional.empty()));
    private static final List<HiddenState> STATES =
            List.of(new HiddenState(Set.of("rings"), 0.25), new HiddenState(Set.of(), 0.75));
    private static final Option KEEP = Option.of("keep", Option.Role.REFERENCE, End.of(Ending.KEEP));

    private static void refused(ThrowingCallable making, String message) {
        assertThatThrownBy(making).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }

    private static Problem problem(List<HiddenState> states, List<Option> options, List<MoneyTest> tests) {
        OwnerInputs owner =
                new OwnerInputs(5000, false, 800, 20, 10, 20, 36, false, Optional.empty(), Optional.empty(), 0);
        return new Problem(
                "USD",
                owner,
                Assumptions.USUAL,
                PowerNow.measured(100),
                FAULTS,
                states,
                options,
                tests,
                Optional.empty());
    }

    private static Option doing(Node tree) {
        return Option.of("work", Option.Role.OTHER, tree);
    }

    private static MoneyTest test(List<Likelihood> results) {
        return new MoneyTest("look", 5, 0, Optional.empty(), results, false, Set.of());
    }

    @Test
    void aResaleShareOfAllMakesMoney() {
        Assumptions usual = Assumptions.USUAL;
        refused(
                () -> new Assumptions(1, 0.08, 0.1, 0.02, 2.5, usual.failureCost(), usual.overruns(), 0.005, 1.7),
                "The resale share must be at least 0 and below 1, was 1.0.");
    }

    @ParameterizedTest
    @CsvSource({"700, 650, 1300", "350, 1400, 1300", "NaN, 650, 1300"})
    void aQuoteGoesUp(double p10, double p50, double p90) {
        assertThatThrownBy(() -> new Quote(p10, p50, p90)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aQuoteSaysWhatWouldBeRight() {
        refused(() -> new Quote(700, 650, 1300), "A quote must be given as P10 ≤ P50 ≤ P90, was 700.0, 650.0, 1300.0.");
    }

    @Test
    void anOverrunNeedsRoomAboveItsMedian() {
        refused(() -> new OverrunFactor(1.5, 1.5), "P90 of an overrun must be above its median 1.5, was 1.5.");
    }

    @Test
    void chancesOfStatesAddUpToOne() {
        List<HiddenState> states = List.of(new HiddenState(Set.of("rings"), 0.25), new HiddenState(Set.of(), 0.7));
        refused(
                () -> problem(states, List.of(KEEP), List.of()),
                "The chances of the states must add up to 1, but come to 0.95.");
    }

    @Test
    void resultsOfATestAddUpToOneInEveryState() {
        MoneyTest wrong = test(
                List.of(new Likelihood("found", List.of(0.9, 0.2)), new Likelihood("not found", List.of(0.1, 0.7))));
        assertThatThrownBy(() -> problem(STATES, List.of(KEEP), List.of(wrong)))
                .hasMessageStartingWith("The chances of test \"look\" in state [] must add up to 1, but come to 0.8");
    }

    @Test
    void aResultHasAChanceInEveryState() {
        MoneyTest wrong = test(List.of(new Likelihood("found", List.of(1.0))));
        refused(
                () -> problem(STATES, List.of(KEEP), List.of(wrong)),
                "The chances of \"found\" in test \"look\" must be one for each of the 2 states, was 1.");
    }

    @Test
    void aMeasuredGainNeedsDegreesOfFreedom() {
        refused(
                () -> new Gain.Measured("setup 7", 1.31, 0.52, 2.9),
                "The degrees of freedom of setup 7 must be at least 3, was 2.9.");
    }

    @Test
    void thereIsExactlyOneReference() {
        refused(
                () -> problem(STATES, List.of(doing(End.of(Ending.KEEP))), List.of()),
                "The reference among the options must be exactly one, was 0.");
    }

    @Test
    void namesOfOptionsAreDifferent() {
        refused(
                () -> problem(STATES, List.of(KEEP, doing(End.of(Ending.SELL)), doing(End.of(Ending.SELL))), List.of()),
                "The names of options must differ, but \"work\" is there twice.");
    }

    @Test
    void faultsAreThoseOfTheTable() {
        Node cures = new End(Ending.KEEP, new Cure.Faults(Set.of("valve")), List.of());
        refused(
                () -> problem(STATES, List.of(KEEP, doing(cures)), List.of()),
                "A fault in the cures of option \"work\" must be one of [rings], was valve.");
        CostLine line = CostLine.work("head", Quote.fixed(5), Overrun.NONE).onlyWith(Set.of("crack"));
        refused(
                () -> problem(STATES, List.of(KEEP, doing(new Do(List.of(line), End.of(Ending.KEEP)))), List.of()),
                "A fault in line \"head\" of option \"work\" must be one of [rings], was crack.");
    }

    @Test
    void looksInsideTreesAreCheckedToo() {
        Node look = new See(List.of(new Outcome(new Likelihood("worn", List.of(1.0, 0.5)), End.of(Ending.SELL))));
        refused(
                () -> problem(STATES, List.of(KEEP, doing(new Choose(List.of(new Choice("look", look))))), List.of()),
                "The chances of a look in option \"work\" in state [] must add up to 1, but come to 0.5.");
    }

    @Test
    void sumsAndChancesStayInTheirRange() {
        refused(
                () -> new OwnerInputs(0, false, 0, 20, 10, 20, 36, false, Optional.empty(), Optional.empty(), 0),
                "The worth of the car with a sound engine must be more than 0, was 0.0.");
        refused(() -> new Find("crack", 1.2), "The chance of crack must be from 0 to 1, was 1.2.");
        refused(
                () -> new Cure.AnotherEngine(1),
                "The hazard of another engine must be at least 0 and below 1, was 1.0.");
        refused(() -> new Budget(-1, false), "The budget must be 0 or more, was -1.0.");
        refused(() -> new Do(List.of(), KEEP.tree()), "The lines of an act must be one or more, was none.");
    }
}
