package org.pullproof.worth.decision.problem;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The whole question: is this car worth more money, and for what.
 *
 * @param currency three letters; all money of the problem is in it
 * @param owner what the owner says
 * @param assumptions what the method assumes
 * @param power what gains are percent of
 * @param faults what each fault does to the money, by its key
 * @param states what may be so; their chances add up to 1
 * @param options what could be done, with exactly one reference
 * @param tests what could be found out first
 * @param healthNext the test that says most about the engine itself, if there is one
 */
public record Problem(
        String currency,
        OwnerInputs owner,
        Assumptions assumptions,
        PowerNow power,
        Map<String, FaultMoney> faults,
        List<HiddenState> states,
        List<Option> options,
        List<MoneyTest> tests,
        Optional<String> healthNext) {
    public Problem {
        faults = Collections.unmodifiableMap(new LinkedHashMap<>(faults)); // keeps the order, so that answers repeat
        states = List.copyOf(states);
        options = List.copyOf(options);
        tests = List.copyOf(tests);
        Check.that(currency.matches("[A-Z]{3}"), "The currency", "three capital letters", currency);
        new ProblemCheck(faults, states).check(options, tests);
    }

    public Option reference() {
        return options.stream()
                .filter(option -> option.role() == Option.Role.REFERENCE)
                .findFirst()
                .orElseThrow();
    }

    /** The same question with other options. */
    public Problem withOptions(List<Option> others) {
        return new Problem(currency, owner, assumptions, power, faults, states, others, tests, healthNext);
    }

    /**
     * What a fault does to the money.
     *
     * @throws IllegalArgumentException if the problem has no such fault
     */
    public FaultMoney fault(String key) {
        FaultMoney fault = faults.get(key);
        if (fault == null) {
            throw new IllegalArgumentException("The problem has no fault \"" + key + "\".");
        }
        return fault;
    }

    /** Chance that a fault is there. */
    public double chanceOf(String fault) {
        return states.stream()
                .filter(state -> state.has(fault))
                .mapToDouble(HiddenState::chance)
                .sum();
    }
}
