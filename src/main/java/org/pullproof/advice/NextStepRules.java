package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.worth.TestPrices;

/**
 * The one thing to do now: the first rule that has something to propose wins, in the order of the job. What the owner does not
 * permit is never proposed. The order is judgement: common practice, no source.
 */
public final class NextStepRules {
    private final List<Rule> rules;

    public NextStepRules(TestPrices prices, Cautions cautions) {
        Proposals proposals = new Proposals(prices, cautions);
        this.rules = Stream.of(
                        new CarRules(proposals).inOrder(),
                        new NonRunnerRules(proposals).inOrder(),
                        new AlarmRules(proposals).inOrder(),
                        new FaultRules(proposals).inOrder(),
                        new HealthRules(proposals).inOrder(),
                        new FaultRules(proposals).ofTheOthers(),
                        new HealthRules(proposals).wholeEngine(),
                        new FaultRules(proposals).whenAllIsRead(),
                        new PurchaseRules(proposals).inOrder(),
                        new TuneUpRules(proposals).inOrder(),
                        new HealthRules(proposals).beforeLoad(),
                        new PowerRules(proposals).inOrder())
                .flatMap(List::stream)
                .toList();
    }

    NextStep choose(Situation now) {
        return rules.stream()
                .map(rule -> rule.propose(now))
                .flatMap(Optional::stream)
                .filter(step -> now.permits(step.needs()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("The last rule has always something to propose"));
    }
}
