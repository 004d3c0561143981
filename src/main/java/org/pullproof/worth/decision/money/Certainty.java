package org.pullproof.worth.decision.money;

import java.util.stream.IntStream;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.FaultMoney;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.decision.problem.Node;
import org.pullproof.worth.decision.problem.Node.Choose;
import org.pullproof.worth.decision.problem.Node.Do;
import org.pullproof.worth.decision.problem.Node.See;
import org.pullproof.worth.decision.problem.Overrun;
import org.pullproof.worth.decision.problem.Problem;

/** Whether anything has to be drawn at all: a quote, a chance, a gain, a look that may go either way, a possible failure. */
public final class Certainty {
    private final Problem problem;
    private final Layout layout;
    private final EndReader ends;

    public Certainty(Problem problem, Layout layout) {
        this.problem = problem;
        this.layout = layout;
        this.ends = new EndReader(layout, Scenario.of(problem));
    }

    /** Whether one draw tells all. */
    public boolean isExact() {
        return IntStream.range(0, layout.leaves().size()).allMatch(this::isKnown)
                && problem.options().stream().allMatch(option -> looksAreSure(option.tree()));
    }

    private boolean isKnown(int leaf) {
        LeafPlan plan = layout.leaves().get(leaf);
        return plan.lines().stream().allMatch(Certainty::isKnown)
                && plan.end().gains().stream().allMatch(Certainty::isKnown)
                && IntStream.range(0, problem.states().size()).allMatch(s -> isKnown(leaf, s));
    }

    private static boolean isKnown(CostLine line) {
        boolean finds =
                line.find().map(find -> find.chance() > 0 && find.chance() < 1).orElse(false);
        return line.quote().isFixed() && line.overrun() == Overrun.NONE && line.hours() == 0 && !finds;
    }

    private static boolean isKnown(Gain gain) {
        return gain instanceof Gain.Expected expected && expected.percent().sd() == 0;
    }

    private boolean isKnown(int leaf, int state) {
        LeafPlan plan = layout.leaves().get(leaf);
        boolean restores = plan.cured(problem.states().get(state)).stream()
                .map(problem::fault)
                .map(FaultMoney::restores)
                .allMatch(normal -> normal.sd() == 0);
        return !plan.keeps() || (restores && ends.read(leaf, state).failure() == 0);
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
