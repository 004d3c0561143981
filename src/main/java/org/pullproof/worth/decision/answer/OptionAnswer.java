package org.pullproof.worth.decision.answer;

import java.util.List;
import org.pullproof.worth.decision.problem.Option;

/**
 * One option weighed. Nets are what the owner is better off than with the reference.
 *
 * @param option the option
 * @param alike options equal to it in every draw, shown as this one row
 * @param expected mean net
 * @param net range of the net
 * @param cost range of the money without the price
 * @param hours mean own hours
 * @param weeks mean weeks without the car
 * @param overBudget chance that the money exceeds the budget; 0 without one
 * @param budgetEdge whether that chance is within its error of the limit
 * @param allowed whether it is within the budget
 * @param chanceBest share of draws in which it is the best; never a reason by itself
 * @param regret what the best option of each draw would have brought more, on average
 * @param powerAfterHp P_now and the mean gain
 * @param failure12 chance that the engine fails within 12 months, while kept
 * @param failure36 the same for 36 months
 * @param parts what the mean net consists of
 * @param dominatedBy allowed options that are better in every way
 * @param policy what it picks at each choice
 */
public record OptionAnswer(
        Option option,
        List<String> alike,
        Sum expected,
        Spread net,
        Spread cost,
        double hours,
        double weeks,
        double overBudget,
        boolean budgetEdge,
        boolean allowed,
        double chanceBest,
        double regret,
        double powerAfterHp,
        double failure12,
        double failure36,
        Parts parts,
        List<String> dominatedBy,
        List<PolicyStep> policy) {
    public OptionAnswer {
        alike = List.copyOf(alike);
        dominatedBy = List.copyOf(dominatedBy);
        policy = List.copyOf(policy);
    }

    public String name() {
        return option.name();
    }
}
