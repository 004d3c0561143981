package org.pullproof.worth.decision.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.pullproof.worth.decision.draws.Streams;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.HiddenState;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.decision.tree.Plan;

/** A problem laid out for reckoning: its trees with numbered leaves, and every different bill and gain only once. */
public final class Layout {
    private final List<Plan> plans = new ArrayList<>();
    private final List<List<PickPlace>> places = new ArrayList<>();
    private final List<LeafPlan> leaves = new ArrayList<>();
    private final Index<CostLine> lines = new Index<>();
    private final Index<List<Integer>> bills = new Index<>();
    private final Index<GainPlan> gains = new Index<>();
    private final Index<Set<String>> faultSets = new Index<>();
    private final int[] faultsOf;
    private final int[][] leftOf;
    private final int[][] billOf;
    private final int[][] gainOf;

    /** Lays a problem out; looks take their draws from these streams. */
    public Layout(Problem problem, Streams streams) {
        for (Option option : problem.options()) {
            TreeReader reader = new TreeReader(option.name(), leaves, streams);
            plans.add(reader.read(option.tree()));
            places.add(reader.places());
        }
        int states = problem.states().size();
        faultsOf = problem.states().stream()
                .mapToInt(state -> faultSets.of(state.faults()))
                .toArray();
        leftOf = new int[leaves.size()][states];
        billOf = new int[leaves.size()][states];
        gainOf = new int[leaves.size()][states];
        for (int leaf = 0; leaf < leaves.size(); leaf++) {
            for (int s = 0; s < states; s++) {
                number(leaf, s, problem.states().get(s));
            }
        }
    }

    private void number(int leaf, int s, HiddenState state) {
        LeafPlan plan = leaves.get(leaf);
        billOf[leaf][s] = bills.of(plan.in(state).stream().map(lines::of).toList());
        leftOf[leaf][s] = faultSets.of(Set.copyOf(plan.left(state)));
        gainOf[leaf][s] = gains.of(plan.keeps() ? new GainPlan(plan.end().gains(), plan.cured(state)) : GainPlan.NONE);
    }

    public List<Plan> plans() {
        return plans;
    }

    /** The picks of an option, in the order of their numbers. */
    public List<PickPlace> places(int option) {
        return places.get(option);
    }

    public List<LeafPlan> leaves() {
        return leaves;
    }

    List<CostLine> lines() {
        return lines.values();
    }

    List<List<Integer>> bills() {
        return bills.values();
    }

    List<GainPlan> gains() {
        return gains.values();
    }

    /** All sets of faults that a state has or an end leaves. */
    List<Set<String>> faultSets() {
        return faultSets.values();
    }

    int faults(int state) {
        return faultsOf[state];
    }

    int left(int leaf, int state) {
        return leftOf[leaf][state];
    }

    int bill(int leaf, int state) {
        return billOf[leaf][state];
    }

    int gain(int leaf, int state) {
        return gainOf[leaf][state];
    }
}
