package org.pullproof.worth.decision.money;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.pullproof.worth.decision.draws.Ingredient;
import org.pullproof.worth.decision.draws.Streams;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.CostLine.Kind;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.Node;
import org.pullproof.worth.decision.problem.Node.Choice;
import org.pullproof.worth.decision.problem.Node.Choose;
import org.pullproof.worth.decision.problem.Node.Do;
import org.pullproof.worth.decision.problem.Node.End;
import org.pullproof.worth.decision.problem.Node.Outcome;
import org.pullproof.worth.decision.problem.Node.See;
import org.pullproof.worth.decision.tree.Branch;
import org.pullproof.worth.decision.tree.Leaf;
import org.pullproof.worth.decision.tree.Look;
import org.pullproof.worth.decision.tree.Pick;
import org.pullproof.worth.decision.tree.Plan;

/** Makes one option ready for reckoning: acts go into the bills of the leaves behind them. */
final class TreeReader {
    private static final Set<Ending> TURNS_BACK = EnumSet.of(Ending.SELL, Ending.PARTS, Ending.WALK);

    private final String option;
    private final List<LeafPlan> leaves;
    private final Streams streams;
    private final List<PickPlace> places = new ArrayList<>();

    TreeReader(String option, List<LeafPlan> leaves, Streams streams) {
        this.option = option;
        this.leaves = leaves;
        this.streams = streams;
    }

    Plan read(Node root) {
        Branch branch = branch(root, new Way("", List.of(), List.of()));
        return new Plan(branch, places.size());
    }

    List<PickPlace> places() {
        return places;
    }

    /** How a node was come to. */
    private record Way(String path, List<String> seen, List<CostLine> paid) {
        Way paying(List<CostLine> lines) {
            return new Way(path, seen, joined(paid, lines));
        }

        Way seeing(String outcome) {
            return new Way(path + "/" + outcome, joined(seen, List.of(outcome)), paid);
        }

        Way picking(int index) {
            return new Way(path + ">" + index, seen, paid);
        }

        private static <T> List<T> joined(List<T> first, List<T> second) {
            List<T> both = new ArrayList<>(first);
            both.addAll(second);
            return both;
        }
    }

    private Branch branch(Node node, Way way) {
        if (node instanceof Do act) {
            return branch(act.then(), way.paying(act.lines()));
        }
        if (node instanceof See see) {
            return look(see, way);
        }
        return node instanceof Choose choose ? pick(choose, way) : leaf((End) node, way);
    }

    private Look look(See see, Way way) {
        List<Branch> children = new ArrayList<>();
        List<double[]> chances = new ArrayList<>();
        for (Outcome outcome : see.outcomes()) {
            children.add(branch(outcome.then(), way.seeing(outcome.seen().name())));
            chances.add(outcome.seen().row());
        }
        return new Look(chances, children, streams.uniform(Ingredient.SEE, option + way.path()));
    }

    private Pick pick(Choose choose, Way way) {
        int index = places.size();
        int first = leaves.size();
        List<String> names = choose.choices().stream().map(Choice::name).toList();
        places.add(new PickPlace(way.path(), way.seen(), names, Set.of(), List.of())); // keeps its number
        List<Branch> children = new ArrayList<>();
        for (int c = 0; c < names.size(); c++) {
            children.add(branch(choose.choices().get(c).then(), way.picking(c)));
        }
        List<Integer> behind = IntStream.range(first, leaves.size()).boxed().toList();
        places.set(index, new PickPlace(way.path(), way.seen(), names, turnBacks(choose), behind));
        return new Pick(index, children);
    }

    private static Set<Integer> turnBacks(Choose choose) {
        return IntStream.range(0, choose.choices().size())
                .filter(c -> choose.choices().get(c).then() instanceof End end && TURNS_BACK.contains(end.ending()))
                .boxed()
                .collect(Collectors.toSet());
    }

    private Leaf leaf(End end, Way way) {
        List<CostLine> lines =
                way.paid().stream().filter(line -> line.kind() != Kind.PRICE).toList();
        leaves.add(new LeafPlan(lines, lines.size() < way.paid().size(), end));
        return new Leaf(leaves.size() - 1);
    }
}
