package org.pullproof.worth.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.TestAnswer;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.Likelihood;
import org.pullproof.worth.decision.problem.MoneyTest;
import org.pullproof.worth.decision.problem.Node.Choice;
import org.pullproof.worth.decision.problem.Node.Choose;
import org.pullproof.worth.decision.problem.Node.Do;
import org.pullproof.worth.decision.problem.Node.End;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.problem.Overrun;
import org.pullproof.worth.decision.problem.OwnerInputs;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.decision.problem.Purchase;
import org.pullproof.worth.decision.problem.Quote;

/** What must hold of every answer whatever the figures (worth.md 6), tried on the reference cases. */
class PropertiesTest {
    static final List<ReferenceCase> CASES = ReferenceCaseTest.CASES;

    /** One before purchase with looks, one owned with measured gains: enough where every try is a whole answer more. */
    static final List<ReferenceCase> TWO = List.of(CASES.get(0), CASES.get(3));

    private static final long SEED = 4711;
    private static final Map<String, Answer> ANSWERS = new HashMap<>();

    private static Answer answer(ReferenceCase reference) {
        return ANSWERS.computeIfAbsent(reference.name(), name -> answer(reference.problem()));
    }

    private static Answer answer(Problem problem) {
        return new Decision(SEED).answer(problem);
    }

    private static Problem with(Problem problem, OwnerInputs owner, List<Option> options, List<MoneyTest> tests) {
        return new Problem(
                problem.currency(),
                owner,
                problem.assumptions(),
                problem.power(),
                problem.faults(),
                problem.states(),
                options,
                tests,
                problem.healthNext());
    }

    private static Problem adding(Problem problem, Option option) {
        List<Option> more = new ArrayList<>(problem.options());
        more.add(option);
        return problem.withOptions(more);
    }

    private static OwnerInputs owner(OwnerInputs from, Optional<Purchase> purchase, double spent) {
        return new OwnerInputs(
                from.worthSound(),
                from.worthAssumed(),
                from.partsValue(),
                from.valuePerHp(),
                from.hourPrice(),
                from.weekWithout(),
                from.monthsKept(),
                from.hardPulls(),
                from.budget(),
                purchase,
                spent);
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("TWO")
    void theSameSeedGivesTheSameAnswer(ReferenceCase reference) {
        assertThat(answer(reference.problem())).isEqualTo(answer(reference));
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("TWO")
    void moneySpentChangesNothing(ReferenceCase reference) {
        Problem problem = reference.problem();
        OwnerInputs more = owner(problem.owner(), problem.owner().purchase(), 98_765);
        Answer then = answer(with(problem, more, problem.options(), problem.tests()));
        assertThat(then.options()).isEqualTo(answer(reference).options());
        assertThat(then.flips()).isEqualTo(answer(reference).flips());
        assertThat(then.tests()).isEqualTo(answer(reference).tests());
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("TWO")
    void theOrderOfOptionsAndTestsChangesNoFigure(ReferenceCase reference) {
        Problem problem = reference.problem();
        List<Option> options = new ArrayList<>(problem.options());
        List<MoneyTest> tests = new ArrayList<>(problem.tests());
        Collections.reverse(options);
        Collections.reverse(tests);
        Answer turned = answer(with(problem, problem.owner(), options, tests));
        assertThat(turned.tests()).isEqualTo(answer(reference).tests());
        assertThat(turned.flips()).isEqualTo(answer(reference).flips());
        assertThat(turned.options())
                .usingRecursiveComparison()
                .ignoringFields("dominatedBy")
                .isEqualTo(answer(reference).options());
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("TWO")
    void anOptionAddedChangesNoOthersNet(ReferenceCase reference) {
        CostLine line = CostLine.work("a costly extra", new Quote(900, 1500, 2500), Overrun.REPAIR);
        Option extra = Option.of("extra", Option.Role.OTHER, new Do(List.of(line), End.of(Ending.KEEP)));
        Answer more = answer(adding(reference.problem(), extra));
        for (OptionAnswer row : answer(reference).options()) {
            assertThat(more.option(row.name()).expected()).isEqualTo(row.expected());
            assertThat(more.option(row.name()).net()).isEqualTo(row.net());
            assertThat(more.option(row.name()).cost()).isEqualTo(row.cost());
        }
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void whatIsDominatedIsNeverFirst(ReferenceCase reference) {
        assertThat(answer(reference).best().dominatedBy()).isEmpty();
        assertThat(answer(reference).best().allowed()).isTrue();
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void perfectInformationIsWorthAnyTestAndNoTestLessThanNothing(ReferenceCase reference) {
        for (TestAnswer test : answer(reference).tests()) {
            assertThat(test.value().value())
                    .isBetween(0.0, answer(reference).knowing().everything());
        }
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void chancesToBeBestAddUpToOne(ReferenceCase reference) {
        double sum = answer(reference).options().stream()
                .mapToDouble(OptionAnswer::chanceBest)
                .sum();
        assertThat(sum).isEqualTo(1, within(1e-6));
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void theNetIsTheSumOfItsParts(ReferenceCase reference) {
        for (OptionAnswer row : answer(reference).options()) {
            assertThat(row.parts().sum()).isEqualTo(row.expected().value(), within(1e-6));
        }
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("TWO")
    void aTestThatEveryStateAnswersAlikeIsWorthNothing(ReferenceCase reference) {
        Problem problem = reference.problem();
        List<Double> even = Collections.nCopies(problem.states().size(), 0.5);
        MoneyTest coin = new MoneyTest(
                "toss a coin",
                0,
                0,
                Optional.empty(),
                List.of(new Likelihood("heads", even), new Likelihood("tails", even)),
                false,
                Set.of());
        Answer tossed = answer(with(problem, problem.owner(), problem.options(), List.of(coin)));
        assertThat(tossed.tests().get(0).value().value()).isZero();
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("TWO")
    void aChoiceWithOneChildEqualsTheChild(ReferenceCase reference) {
        List<Option> wrapped = reference.problem().options().stream()
                .map(option -> new Option(
                        option.name(),
                        option.role(),
                        option.firstAct(),
                        new Choose(List.of(new Choice("go on", option.tree())))))
                .toList();
        Answer rows = answer(reference.problem().withOptions(wrapped));
        for (OptionAnswer row : answer(reference).options()) {
            double net = rows.option(row.name()).expected().value();
            assertThat(net).isEqualTo(row.expected().value(), within(1e-9));
        }
    }

    @Test
    void aHigherPriceLowersTheNetByAsMuchAndLeavesTheHighest() {
        ReferenceCase reference = CASES.get(0);
        Problem problem = reference.problem();
        Purchase asked = problem.owner().purchase().orElseThrow();
        Purchase dearer = new Purchase(asked.asked().map(price -> price + 123), asked.least());
        Answer then = answer(with(
                problem,
                owner(problem.owner(), Optional.of(dearer), problem.owner().spent()),
                problem.options(),
                problem.tests()));
        for (OptionAnswer row : answer(reference).options()) {
            double less = row.option().role() == Option.Role.BUYS ? 123 : 0;
            double net = then.option(row.name()).expected().value();
            assertThat(net).isEqualTo(row.expected().value() - less, within(1e-6));
        }
        double highest = then.purchase().orElseThrow().highest().value();
        assertThat(highest)
                .isEqualTo(answer(reference).purchase().orElseThrow().highest().value(), within(1e-6));
    }

    /** Other seeds scatter by what their own ten batches say: within four standard errors of each other. */
    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void anotherSeedAgreesWithinTheNoise(ReferenceCase reference) {
        Answer others = new Decision(SEED + 1).answer(reference.problem());
        for (OptionAnswer row : answer(reference).options()) {
            OptionAnswer other = others.option(row.name());
            double se = Math.hypot(row.expected().se(), other.expected().se());
            assertThat(other.expected().value()).isEqualTo(row.expected().value(), within(4 * se + 1e-9));
        }
    }

    /** Worked by hand in docs/methods/worth.md: 80.15 + 4.07 − 11.63 − 34.38 = 38.2. */
    @Test
    void goingBackToSetupSevenIsWorthWhatItIsByHand() {
        OptionAnswer row = answer(CASES.get(3)).option("go to setup 7 and stop");
        assertThat(row.parts().power()).isEqualTo(80.15, within(0.05));
        assertThat(row.parts().car()).isEqualTo(4.07, within(0.01));
        assertThat(row.parts().money()).isEqualTo(-11.63, within(0.01));
        assertThat(row.parts().hours()).isEqualTo(-34.38, within(0.05));
        assertThat(row.parts().weeks()).isZero();
        assertThat(row.parts().failure()).isEqualTo(0, within(0.05));
        assertThat(row.expected().value()).isEqualTo(38.2, within(0.1));
    }
}
