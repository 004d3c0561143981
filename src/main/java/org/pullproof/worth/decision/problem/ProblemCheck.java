package org.pullproof.worth.decision.problem;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.pullproof.worth.decision.problem.Node.Choice;
import org.pullproof.worth.decision.problem.Node.Choose;
import org.pullproof.worth.decision.problem.Node.Do;
import org.pullproof.worth.decision.problem.Node.End;
import org.pullproof.worth.decision.problem.Node.Outcome;
import org.pullproof.worth.decision.problem.Node.See;

/** Whether the parts of a problem speak of the same faults and states. */
final class ProblemCheck {
    private final Map<String, FaultMoney> faults;
    private final List<HiddenState> states;

    ProblemCheck(Map<String, FaultMoney> faults, List<HiddenState> states) {
        this.faults = faults;
        this.states = states;
    }

    void check(List<Option> options, List<MoneyTest> tests) {
        Check.atLeastOne("The states", states);
        Check.sumsToOne(
                "The chances of the states",
                states.stream().mapToDouble(HiddenState::chance).sum());
        states.forEach(state -> known(state.faults(), "a state"));
        long references = options.stream()
                .filter(option -> option.role() == Option.Role.REFERENCE)
                .count();
        Check.that(references == 1, "The reference among the options", "exactly one", references);
        unique(options.stream().map(Option::name).toList(), "options");
        unique(tests.stream().map(MoneyTest::name).toList(), "tests");
        options.forEach(option -> tree(option.tree(), "option \"" + option.name() + "\""));
        tests.forEach(test -> table(test.results(), "test \"" + test.name() + "\""));
    }

    private void tree(Node node, String where) {
        if (node instanceof Do act) {
            act.lines().forEach(line -> known(line.when(), "line \"" + line.name() + "\" of " + where));
            tree(act.then(), where);
        } else if (node instanceof See see) {
            table(see.outcomes().stream().map(Outcome::seen).toList(), "a look in " + where);
            see.outcomes().forEach(outcome -> tree(outcome.then(), where));
        } else if (node instanceof Choose choose) {
            unique(choose.choices().stream().map(Choice::name).toList(), "choices in " + where);
            choose.choices().forEach(choice -> tree(choice.then(), where));
        } else if (node instanceof End end && end.cure() instanceof Cure.Faults cured) {
            known(cured.faults(), "the cures of " + where);
        }
    }

    /** In every state the chances of all results add up to 1. */
    private void table(List<Likelihood> results, String where) {
        unique(results.stream().map(Likelihood::name).toList(), "results of " + where);
        for (Likelihood result : results) {
            Check.that(
                    result.chances().size() == states.size(),
                    "The chances of \"" + result.name() + "\" in " + where,
                    "one for each of the " + states.size() + " states",
                    result.chances().size());
        }
        for (int s = 0; s < states.size(); s++) {
            int state = s;
            double sum =
                    results.stream().mapToDouble(r -> r.chances().get(state)).sum();
            Check.sumsToOne(
                    "The chances of " + where + " in state " + states.get(s).faults(), sum);
        }
    }

    private void known(Set<String> named, String where) {
        for (String fault : named) {
            Check.that(
                    faults.containsKey(fault),
                    "A fault in " + where,
                    "one of " + new TreeSet<>(faults.keySet()),
                    fault);
        }
    }

    private static void unique(Collection<String> names, String what) {
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                throw new IllegalArgumentException(
                        "The names of " + what + " must differ, but \"" + name + "\" is there twice.");
            }
        }
    }
}
