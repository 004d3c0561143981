package org.pullproof.worth.decision.money;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Cure;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.HiddenState;
import org.pullproof.worth.decision.problem.Node.End;

/**
 * An end with everything that is paid on the way to it.
 *
 * @param lines the bill, without the price
 * @param buys whether the price is on the way
 * @param end the end
 */
public record LeafPlan(List<CostLine> lines, boolean buys, End end) {
    public LeafPlan {
        lines = List.copyOf(lines);
    }

    /** Lines that come in this state. */
    List<CostLine> in(HiddenState state) {
        return lines.stream()
                .filter(line -> state.faults().containsAll(line.when()))
                .toList();
    }

    /** Faults of this state that the work cures, in the order of their names. */
    Set<String> cured(HiddenState state) {
        Set<String> cured = new TreeSet<>(state.faults());
        if (end.cure() instanceof Cure.Faults some) {
            cured.retainAll(some.faults());
        }
        return cured;
    }

    Set<String> left(HiddenState state) {
        Set<String> left = new TreeSet<>(state.faults());
        left.removeAll(cured(state));
        return left;
    }

    boolean keeps() {
        return end.ending() == Ending.KEEP;
    }

    /** Whether weeks without the car are the owner's. */
    boolean staysWithOwner() {
        return keeps() || end.ending() == Ending.LAY_UP;
    }

    boolean paysPrice() {
        return buys && end.ending() != Ending.WALK;
    }
}
