package org.pullproof.worth.trade;

import java.util.Optional;
import java.util.Set;
import org.pullproof.worth.decision.problem.Option.Role;

/**
 * An option of the trade, before it is put to one engine.
 *
 * @param name what
 * @param role beside the others
 * @param owned whether it is for who owns the car; else for who may buy it
 * @param firstAct the act it begins with, if that is not its own name
 * @param firstTest key of the test that its first step is, if it is one
 * @param runs whether it is for an engine that runs and may run; else, for the reference, for one that does not; absent for any
 * @param suspects faults it is for: offered when their chance together is large enough; empty for any
 * @param needsWork works of which one at least must be left; empty for any
 * @param forParts whether it is offered only where the parts are worth much of the car
 * @param afterDays whether it is offered only once there are pulls
 * @param tree what is done, seen and chosen
 */
public record Plan(
        String name,
        Role role,
        boolean owned,
        Optional<String> firstAct,
        Optional<String> firstTest,
        Optional<Boolean> runs,
        Set<String> suspects,
        Set<String> needsWork,
        boolean forParts,
        boolean afterDays,
        Branch tree) {
    public Plan {
        suspects = Set.copyOf(suspects);
        needsWork = Set.copyOf(needsWork);
    }
}
