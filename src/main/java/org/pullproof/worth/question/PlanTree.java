package org.pullproof.worth.question;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Cure;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.decision.problem.Likelihood;
import org.pullproof.worth.decision.problem.Node;
import org.pullproof.worth.trade.Branch;
import org.pullproof.worth.trade.Work;

/**
 * Puts a plan of the trade to one engine: works that do not fit fall away, looks get their chances by state, ends get what the works
 * before them cure and gain. What nobody can see, or choose between, is no branch.
 */
final class PlanTree {
    private static final String SURE = "sure";
    private static final String ELSE = "else";

    private final Bench bench;
    private final boolean mayRun;
    private final List<Gain> extra;

    /**
     * @param mayRun whether the engine may be driven with what is not cured
     * @param extra gains that every end that is kept has besides
     */
    PlanTree(Bench bench, boolean mayRun, List<Gain> extra) {
        this.bench = bench;
        this.mayRun = mayRun;
        this.extra = List.copyOf(extra);
    }

    /**
     * What was done on the way.
     *
     * @param works in order
     * @param back faults that the weak cylinder, being back, has lost
     */
    private record Way(List<Work> works, Set<String> back) {
        Way doing(List<Work> more) {
            return new Way(Stream.concat(works.stream(), more.stream()).toList(), back);
        }
    }

    Node of(Branch tree) {
        return node(tree, new Way(List.of(), Set.of()));
    }

    private Node node(Branch branch, Way way) {
        if (branch instanceof Branch.Do act) {
            return act(act, way);
        } else if (branch instanceof Branch.See see) {
            return see(see, way);
        } else if (branch instanceof Branch.Back back) {
            return back(back, way);
        } else if (branch instanceof Branch.Choose choose) {
            return choose(choose, way);
        } else if (branch instanceof Branch.Part part) {
            return node(bench.catalogue().part(part.name()), way);
        }
        return end((Branch.End) branch, way);
    }

    private Node act(Branch.Do act, Way way) {
        List<Work> works = bench.left(act.works()).stream()
                .filter(work -> !way.works().contains(work))
                .toList();
        Node then = node(act.then(), way.doing(works));
        List<CostLine> lines = works.stream().map(bench::line).toList();
        return lines.isEmpty() ? then : new Node.Do(lines, then);
    }

    private Node see(Branch.See see, Way way) {
        int count = bench.states().states().size();
        double[] left = new double[count];
        java.util.Arrays.fill(left, 1);
        List<Node.Outcome> outcomes = new ArrayList<>();
        for (Branch.Sight sight : see.sights()) {
            List<Double> chances = new ArrayList<>();
            for (int s = 0; s < count; s++) {
                double chance =
                        left[s] * chance(sight, bench.states().states().get(s).faults());
                left[s] -= chance;
                chances.add(chance);
            }
            outcomes.add(new Node.Outcome(new Likelihood(sight.seen(), chances), node(sight.then(), way)));
        }
        return seen(outcomes);
    }

    private double chance(Branch.Sight sight, Set<String> faults) {
        if (sight.chances().isEmpty()) {
            return 1;
        }
        for (Map.Entry<String, String> by : sight.chances().entrySet()) {
            boolean has = bench.meant(by.getKey()).stream().anyMatch(faults::contains);
            if (has || by.getKey().equals(ELSE)) {
                return by.getValue().equals(SURE) ? 1 : bench.catalogue().number(by.getValue());
            }
        }
        return 0;
    }

    /** Without what can never be seen; no look at all where one thing is seen for certain or nothing depends on it. */
    private static Node seen(List<Node.Outcome> outcomes) {
        List<Node.Outcome> possible = outcomes.stream()
                .filter(outcome -> outcome.seen().chances().stream().anyMatch(chance -> chance > 0))
                .toList();
        boolean alike = possible.stream().map(Node.Outcome::then).distinct().count() == 1;
        return alike ? possible.get(0).then() : new Node.See(possible);
    }

    private Node back(Branch.Back branch, Way way) {
        List<Double> chances = bench.states().states().stream()
                .map(state -> chanceBack(state.faults(), way.works()))
                .toList();
        Set<String> curable = new TreeSet<>();
        bench.states().faults().stream()
                .filter(fault -> bench.felt(fault) && chanceToCure(fault, way.works()) > 0)
                .forEach(curable::add);
        Node back = node(branch.back(), new Way(way.works(), curable));
        Node weak = node(branch.weak(), way);
        List<Double> against = chances.stream().map(chance -> 1 - chance).toList();
        return seen(List.of(
                new Node.Outcome(new Likelihood("cylinder back", chances), back),
                new Node.Outcome(new Likelihood("still weak", against), weak)));
    }

    /** Back where every fault that is felt is cured; an engine without one was never weak. */
    private double chanceBack(Set<String> faults, List<Work> works) {
        return faults.stream()
                .filter(bench::felt)
                .mapToDouble(fault -> chanceToCure(fault, works))
                .reduce(1, (a, b) -> a * b);
    }

    private double chanceToCure(String fault, List<Work> works) {
        return 1
                - works.stream()
                        .mapToDouble(work -> 1 - bench.chanceToCure(work, fault))
                        .reduce(1, (a, b) -> a * b);
    }

    private Node choose(Branch.Choose choose, Way way) {
        Map<String, Branch> open = new LinkedHashMap<>(choose.choices());
        if (!mayRun) {
            open.values().removeIf(PlanTree::asItIs);
        }
        List<Node.Choice> choices = open.entrySet().stream()
                .map(choice -> new Node.Choice(choice.getKey(), node(choice.getValue(), way)))
                .toList();
        return choices.size() == 1 ? choices.get(0).then() : new Node.Choose(choices);
    }

    private static boolean asItIs(Branch branch) {
        return branch instanceof Branch.End end && end.asItIs();
    }

    private Node end(Branch.End end, Way way) {
        Ending ending = end.asItIs() && !mayRun ? Ending.LAY_UP : end.ending();
        List<Gain> gains = ending == Ending.KEEP ? gains(way.works()) : List.of();
        return new Node.End(ending, cure(way), gains);
    }

    private List<Gain> gains(List<Work> works) {
        return Stream.concat(extra.stream(), works.stream().flatMap(work -> bench.gain(work).stream()))
                .toList();
    }

    private Cure cure(Way way) {
        return way.works().stream()
                .filter(Work::otherEngine)
                .reduce((earlier, later) -> later)
                .<Cure>map(engine -> new Cure.AnotherEngine(bench.hazard(engine)))
                .orElseGet(() -> new Cure.Faults(cured(way)));
    }

    private Set<String> cured(Way way) {
        Set<String> cured = new TreeSet<>(way.back());
        way.works().stream().map(bench::cures).flatMap(Collection::stream).forEach(cured::add);
        cured.retainAll(bench.states().faults());
        return cured;
    }
}
