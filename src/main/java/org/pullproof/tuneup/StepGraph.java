package org.pullproof.tuneup;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
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
    /** The plan of all steps, by its name; "all" is short for it. */
    public static final String FULL = "full tune-up";

    public StepGraph {
        steps = List.copyOf(steps);
        plans = Collections.unmodifiableMap(new LinkedHashMap<>(plans));
        new StepOrder(id, steps).require();
        requireOneGate(id, steps);
        for (Map.Entry<String, List<String>> plan : plans.entrySet()) {
            if (!ids(steps).containsAll(plan.getValue())) {
                throw new IllegalArgumentException("The plan \"" + plan.getKey() + "\" of " + id
                        + " names a step that is not there: " + plan.getValue());
            }
        }
    }

    private static Set<String> ids(List<Step> steps) {
        return steps.stream().map(Step::id).collect(Collectors.toSet());
    }

    private static void requireOneGate(String id, List<Step> steps) {
        int gate = -1;
        for (int i = 0; i < steps.size(); i++) {
            Kind kind = steps.get(i).kind();
            boolean fits = kind == Kind.START_GATE ? gate < 0 : (gate >= 0) == (kind == Kind.RUNNING);
            if (!fits) {
                throw new IllegalArgumentException(
                        "Step " + steps.get(i).id() + " of " + id
                                + " stands on the wrong side of the one start gate: work before it, what runs the engine after it");
            }
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
