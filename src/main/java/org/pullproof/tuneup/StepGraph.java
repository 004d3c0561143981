package org.pullproof.tuneup;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pullproof.tuneup.Step.Kind;

/**
 * The steps of one kind of engine in their listed order. A step stands after all it needs, so there is no cycle; one start
 * gate parts the work from what is done with the engine running.
 *
 * @param id name that profiles use: {@code v-distributor}
 * @param name in words
 * @param steps in order
 * @param plans choices of steps people make, by name: "plugs and wires only"
 */
public record StepGraph(String id, String name, List<Step> steps, Map<String, List<String>> plans) {
    public StepGraph {
        steps = List.copyOf(steps);
        plans = Collections.unmodifiableMap(new LinkedHashMap<>(plans));
        Set<String> before = new HashSet<>();
        Set<String> off = new HashSet<>();
        for (Step step : steps) {
            for (String need : step.needs()) {
                require(before.contains(need), id, step, "needs \"" + need + "\", which is no step before it");
            }
            for (String earlier : step.after()) {
                require(
                        before.contains(earlier),
                        id,
                        step,
                        "comes after \"" + earlier + "\", which is no step before it");
            }
            for (String part : step.putsBack()) {
                require(off.contains(part), id, step, "puts back \"" + part + "\", which no step before it takes off");
            }
            require(before.add(step.id()), id, step, "stands there twice");
            off.addAll(step.takesOff());
        }
        requireOneGate(id, steps);
        for (Map.Entry<String, List<String>> plan : plans.entrySet()) {
            if (!before.containsAll(plan.getValue())) {
                throw new IllegalArgumentException("The plan \"" + plan.getKey() + "\" of " + id
                        + " names a step that is not there: " + plan.getValue());
            }
        }
    }

    private static void require(boolean holds, String id, Step step, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException("Step " + step.id() + " of " + id + " " + otherwise);
        }
    }

    private static void requireOneGate(String id, List<Step> steps) {
        int gate = -1;
        for (int i = 0; i < steps.size(); i++) {
            Kind kind = steps.get(i).kind();
            boolean fits = kind == Kind.START_GATE ? gate < 0 : (gate >= 0) == (kind == Kind.RUNNING);
            require(fits, id, steps.get(i), "stands on the wrong side of the one start gate");
            gate = kind == Kind.START_GATE ? i : gate;
        }
        if (gate < 0) {
            throw new IllegalArgumentException("The steps of " + id + " have no start gate");
        }
    }

    public Step gate() {
        return steps.stream()
                .filter(step -> step.kind() == Kind.START_GATE)
                .findFirst()
                .orElseThrow();
    }

    public Optional<Step> step(String stepId) {
        return steps.stream().filter(step -> step.id().equals(stepId)).findFirst();
    }

    /**
     * @throws IllegalArgumentException naming the steps there are
     */
    public Step require(String stepId) {
        return step(stepId)
                .orElseThrow(() -> new IllegalArgumentException(
                        "\"" + stepId + "\" is no step of this tune-up; its steps" + " are "
                                + String.join(" ", steps.stream().map(Step::id).toList())));
    }
}
