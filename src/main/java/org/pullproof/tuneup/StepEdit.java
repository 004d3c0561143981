package org.pullproof.tuneup;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Edits the steps of one car. */
public final class StepEdit {
    private StepEdit() {}

    /**
     * The graph with a step in the place of the one with its id.
     *
     * @throws IllegalArgumentException with a sentence if there is no such step, a need is missing or goes round in a circle
     */
    public static StepGraph replaced(StepGraph graph, Step step) {
        graph.require(step.id());
        List<Step> steps = graph.steps().stream()
                .map(known -> known.id().equals(step.id()) ? step : known)
                .toList();
        return new StepGraph(graph.id(), graph.name(), steps, graph.plans());
    }

    /**
     * What was ticked or chosen must still be there.
     *
     * @throws IllegalArgumentException naming the steps that would be lost
     */
    public static void requireTold(StepGraph graph, TuneUp tuneUp) {
        Set<String> lost = new TreeSet<>(tuneUp.done().keySet());
        lost.addAll(tuneUp.wanted());
        graph.steps().forEach(step -> lost.remove(step.id()));
        if (!lost.isEmpty()) {
            throw new IllegalArgumentException("These steps are ticked or wanted and would be lost: "
                    + String.join(", ", lost) + ". Keep their ids, or take ticks and choice away first.");
        }
    }
}
