package org.pullproof.tuneup;

import java.util.List;

/**
 * The steps of one kind of engine in their listed order.
 *
 * @param id name that profiles use: {@code v8-distributor}
 * @param name in words
 * @param steps in order; each need names a step of this graph
 */
public record StepGraph(String id, String name, List<Step> steps) {
    public StepGraph {
        steps = List.copyOf(steps);
        List<String> ids = steps.stream().map(Step::id).toList();
        for (Step step : steps) {
            for (String need : step.needs()) {
                if (!ids.contains(need)) {
                    throw new IllegalArgumentException(
                            "Step " + step.id() + " of " + id + " needs \"" + need + "\", which is no step there");
                }
            }
        }
    }
}
