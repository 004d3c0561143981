package org.pullproof.worth.decision.answer;

import java.util.List;

/**
 * What to pick at one place of a plan.
 *
 * @param path where: {@code /outcome} after a look, {@code >index} after a choice
 * @param seen the outcomes on the way there
 * @param index which choice, from 0
 * @param choice its name
 * @param turnsBack whether it gives the work up there: sell, break, walk away
 * @param chance chance to come there, given that the plan is followed; a step that the plan never comes to is in the policy too
 */
public record PolicyStep(String path, List<String> seen, int index, String choice, boolean turnsBack, double chance) {
    public PolicyStep {
        seen = List.copyOf(seen);
    }
}
