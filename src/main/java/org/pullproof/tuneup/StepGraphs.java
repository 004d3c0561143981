package org.pullproof.tuneup;

import java.util.List;
import java.util.stream.Collectors;
import org.pullproof.engine.EngineProfile;

/**
 * The step graphs the program knows.
 *
 * @param all every graph, each id once
 */
public record StepGraphs(List<StepGraph> all) {
    public StepGraphs {
        all = List.copyOf(all);
    }

    /**
     * The steps a tune-up follows: those edited for this car, else those its profile names.
     *
     * @throws IllegalArgumentException naming the graphs there are
     */
    public StepGraph of(EngineProfile profile, TuneUp tuneUp) {
        return tuneUp.own().orElseGet(() -> of(profile));
    }

    /**
     * The graph an engine's profile names.
     *
     * @throws IllegalArgumentException naming the graphs there are
     */
    public StepGraph of(EngineProfile profile) {
        return all.stream()
                .filter(graph -> graph.id().equals(profile.steps()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The profile " + profile.id() + " names the tune-up \""
                        + profile.steps() + "\"; there are " + ids()));
    }

    private String ids() {
        return all.stream().map(StepGraph::id).collect(Collectors.joining(", "));
    }
}
