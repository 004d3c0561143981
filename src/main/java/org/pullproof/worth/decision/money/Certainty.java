package org.pullproof.worth.decision.money;

import java.util.List;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.FaultMoney;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.decision.problem.HiddenState;
import org.pullproof.worth.decision.problem.Node;
import org.pullproof.worth.decision.problem.Node.Choose;
import org.pullproof.worth.decision.problem.Node.Do;
import org.pullproof.worth.decision.problem.Node.See;
import org.pullproof.worth.decision.problem.Overrun;
import org.pullproof.worth.decision.problem.Problem;

/** Whether anything has to be drawn at all: a quote, a chance, a gain, a look that may go either way, a possible failure. */
public final class Certainty {
    private final Problem problem;
    private final EndReader ends;

    public Certainty(Problem problem) {
        this.problem = problem;
        this.ends = new EndReader(Scenario.of(problem));
    }

    /** Whether one draw tells all. */
    public boolean isExact(List<LeafPlan> leaves) {
        return leaves.stream().allMatch(this::isKnown)
                && problem.options().stream().allMatch(option -> looksAreSure(option.tree()));
    }

    private boolean isKnown(LeafPlan leaf) {
        return leaf.lines().stream().allMatch(Certainty::isKnown)
                && leaf.end().gains().stream().allMatch(Certainty::isKnown)
                && problem.states().stream().allMatch(state -> isKnown(leaf, state));
    }

    private static boolean isKnown(CostLine line) {
        boolean finds =
                line.find().map(find -> find.chance() > 0 && find.chance() < 1).orElse(false);
        return line.quote().isFixed() && line.overrun() == Overrun.NONE && line.hours() == 0 && !finds;
    }

    private static boolean isKnown(Gain gain) {
        return gain instanceof Gain.Expected expected && expected.percent().sd() == 0;
    }

    private boolean isKnown(LeafPlan leaf, HiddenState state) {
        if (!leaf.keeps()) {
            return true;
        }
        boolean restores = leaf.cured(state).stream()
                .map(problem.faults()::get)
                .map(FaultMoney::restores)
                .allMatch(normal -> normal.sd() == 0);
        return restores && ends.read(leaf, state).failure() == 0;
    }

    private static boolean looksAreSure(Node node) {
        if (node instanceof Do act) {
            return looksAreSure(act.then());
        }
        if (node instanceof Choose choose) {
            return choose.choices().stream().allMatch(choice -> looksAreSure(choice.then()));
        }
        return !(node instanceof See see)
                || see.outcomes().stream().allMatch(outcome -> outcome.seen().isSure() && looksAreSure(outcome.then()));
    }
}
