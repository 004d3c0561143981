package org.pullproof.worth.decision.answer;

import java.util.List;
import java.util.Optional;
import org.pullproof.worth.decision.problem.Problem;

/**
 * The whole answer.
 *
 * @param problem the question
 * @param call what it amounts to
 * @param exact whether nothing had to be drawn
 * @param noise noise of the best option's net, draws and inputs together; 0 if it is the reference
 * @param options best first, those out of the budget after all that are allowed; equal ones as one row
 * @param lead of the best over the best with another first act; absent if there is no such option
 * @param purchase what the car is worth paying; absent once it is owned or if nothing buys it
 * @param shut the best option out of the budget, if it would be better than the best allowed
 * @param flips nearest values of inputs that change the best option
 * @param knowing what certainty would be worth
 * @param tests worth of each test, the best net first; the first step of the best option is not among them
 * @param pair the best two tests together; absent with fewer than two
 * @param smallestSum smallest sum that matters
 * @param remarks what bends the answer
 */
public record Answer(
        Problem problem,
        Call call,
        boolean exact,
        double noise,
        List<OptionAnswer> options,
        Optional<Lead> lead,
        Optional<PurchaseAnswer> purchase,
        Optional<Shut> shut,
        List<Flip> flips,
        Knowing knowing,
        List<TestAnswer> tests,
        Optional<PairAnswer> pair,
        double smallestSum,
        List<Remark> remarks) {
    public Answer {
        options = List.copyOf(options);
        flips = List.copyOf(flips);
        tests = List.copyOf(tests);
        remarks = List.copyOf(remarks);
    }

    public OptionAnswer best() {
        return options.get(0);
    }

    /**
     * The row of an option, or the one it is shown in.
     *
     * @throws IllegalArgumentException if the problem has no such option
     */
    public OptionAnswer option(String name) {
        return options.stream()
                .filter(row -> row.name().equals(name) || row.alike().contains(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The problem has no option \"" + name + "\"."));
    }
}
