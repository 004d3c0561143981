package org.pullproof.tuneup;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.tuneup.Step.Heat;
import org.pullproof.tuneup.Step.Kind;

/**
 * The steps that are wanted, with all they need and what is done already, in an order that takes things off once: what needs
 * the engine warm comes before it cools, and cools with it; what needs the same parts off comes together. The start gate and
 * the start end every plan. Immutable.
 */
final class StepPlan {
    private final StepGraph whole;
    private final Set<String> wanted;
    private final StepGraph graph;

    /**
     * @param whole all steps of this kind of engine
     * @param tuneUp what is wanted, and what is done
     * @throws IllegalArgumentException if a wanted step is none of them
     */
    StepPlan(StepGraph whole, TuneUp tuneUp) {
        this.whole = whole;
        this.wanted = tuneUp.wanted();
        wanted.forEach(whole::require);
        Set<String> held = wanted.isEmpty() ? ids(whole.steps()) : withNeeds(tuneUp);
        List<Step> steps = whole.steps().stream()
                .filter(step -> held.contains(step.id()))
                .map(step -> step.within(held))
                .toList();
        this.graph = new StepGraph(whole.id(), whole.name(), ordered(steps), java.util.Map.of());
    }

    StepGraph graph() {
        return graph;
    }

    private static Set<String> ids(List<Step> steps) {
        return steps.stream().map(Step::id).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Wanted and done steps with all they need, the gate, and the start; the gate needs only what is there. */
    private Set<String> withNeeds(TuneUp tuneUp) {
        Set<String> held = new LinkedHashSet<>(wanted);
        held.addAll(tuneUp.done().keySet());
        held.add(whole.gate().id());
        start().ifPresent(step -> held.add(step.id()));
        List<Step> backwards = new ArrayList<>(whole.steps());
        java.util.Collections.reverse(backwards);
        for (Step step : backwards) {
            if (held.contains(step.id()) && step.kind() != Kind.START_GATE) {
                held.addAll(step.needs());
            }
        }
        return held;
    }

    private Optional<Step> start() {
        return whole.steps().stream()
                .filter(step -> step.kind() == Kind.RUNNING)
                .findFirst();
    }

    /** The listed order, but what is done warm comes as soon as it may while the engine has not cooled. */
    private static List<Step> ordered(List<Step> listed) {
        List<Step> left = new ArrayList<>(listed);
        List<Step> order = new ArrayList<>();
        Set<String> placed = new LinkedHashSet<>();
        while (!left.isEmpty()) {
            boolean warm = order.stream().noneMatch(step -> step.heat() == Heat.COOLS);
            List<Step> free = left.stream()
                    .filter(step -> placed.containsAll(step.needs()))
                    .toList();
            Step next = free.stream()
                    .filter(step -> warm && step.heat() == Heat.WARM)
                    .findFirst()
                    .orElse(free.get(0));
            left.remove(next);
            order.add(next);
            placed.add(next.id());
        }
        return order;
    }

    /**
     * Minutes of the steps not done yet: their sum, less what warm work just before the cooling already lets it cool.
     */
    int minutesLeft(Set<String> done) {
        int sum = 0;
        int cooling = 0;
        for (Step step : graph.steps()) {
            if (!done.contains(step.id())) {
                int minutes = step.heat() == Heat.COOLS ? Math.max(0, step.minutes() - cooling) : step.minutes();
                sum += minutes;
                cooling = step.heat() == Heat.WARM ? cooling + step.minutes() : cooling;
            }
        }
        return sum;
    }

    /** Why the order is as it is, one sentence each. */
    List<String> because() {
        List<String> because = new ArrayList<>();
        warmBeforeCooling().ifPresent(because::add);
        for (Step step : whole.steps()) {
            step.after().stream()
                    .filter(earlier -> holds(step.id()) && holds(earlier))
                    .forEach(earlier -> because.add("Step " + earlier + " comes before step " + step.id() + ", because "
                            + offAnyway(step) + " off anyway."));
        }
        if (!wanted.isEmpty()) {
            because.add(added());
        }
        return because;
    }

    private boolean holds(String step) {
        return graph.step(step).isPresent();
    }

    private Optional<String> warmBeforeCooling() {
        List<Step> steps = graph.steps();
        Optional<Step> cools =
                steps.stream().filter(step -> step.heat() == Heat.COOLS).findFirst();
        return steps.stream()
                .filter(step -> step.heat() == Heat.WARM)
                .filter(step -> cools.filter(cold -> steps.indexOf(step) < steps.indexOf(cold))
                        .isPresent())
                .findFirst()
                .map(step -> "Step " + step.id() + " comes before the cooling of step "
                        + cools.orElseThrow().id()
                        + ": oil drains warm, and the engine cools meanwhile.");
    }

    private String offAnyway(Step step) {
        List<String> parts = step.needs().stream()
                .flatMap(need -> whole.require(need).takesOff().stream())
                .toList();
        return parts.isEmpty() ? "what it needs is" : "the " + String.join(" and ", parts) + " are";
    }

    private String added() {
        List<String> others = graph.steps().stream()
                .map(Step::id)
                .filter(step -> !wanted.contains(step))
                .toList();
        return others.isEmpty()
                ? "Nothing else is needed."
                : "Steps " + String.join(", ", others) + " are there because the wanted ones need them, or are done.";
    }
}
