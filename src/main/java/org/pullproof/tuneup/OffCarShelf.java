package org.pullproof.tuneup;

import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pullproof.tuneup.TuneUpFindings.Block;
import org.pullproof.tuneup.TuneUpFindings.OffCar;

/**
 * What is off the car now. A ticked step takes its parts off; they come back when a later ticked step fits them, or when a
 * person says so. Passing the start gate brings nothing back.
 */
final class OffCarShelf {
    private final StepGraph graph;
    private final TuneUp tuneUp;
    private final Set<String> back;

    OffCarShelf(StepGraph graph, TuneUp tuneUp) {
        this.graph = graph;
        this.tuneUp = tuneUp;
        this.back = new HashSet<>(tuneUp.back());
        done().forEach(step -> back.addAll(step.putsBack()));
    }

    private List<Step> done() {
        return graph.steps().stream()
                .filter(step -> tuneUp.done().containsKey(step.id()))
                .toList();
    }

    List<OffCar> parts() {
        Map<String, LocalDateTime> since = tuneUp.done();
        Map<String, OffCar> parts = new LinkedHashMap<>();
        for (Step step : done()) {
            for (String part : step.takesOff()) {
                if (!back.contains(part)) {
                    parts.put(part, new OffCar(part, step.id(), since.getOrDefault(step.id(), LocalDateTime.MIN)));
                }
            }
        }
        return List.copyOf(parts.values());
    }

    /** Parts that must be back and checks that must be confirmed before the engine starts. */
    List<Standing> inTheWay() {
        Map<String, Standing> standing = new LinkedHashMap<>();
        for (Step step : done()) {
            for (String part : step.backBeforeStart()) {
                if (!back.contains(part) && !tuneUp.leftOff().containsKey(part)) {
                    standing.put(
                            part, new Standing(part, step.id(), step.takesOff().contains(part)));
                }
            }
        }
        return List.copyOf(standing.values());
    }

    /**
     * @param name of a part or a check
     * @param step id of its step
     * @param off whether it is a part that is off, else a check that nobody confirmed
     */
    record Standing(String name, String step, boolean off) {
        Block block() {
            return new Block(name + (off ? ": still off" : ": not confirmed"), step, Optional.of(name));
        }
    }

    /** Whether parts were touched since, so that the start gate has to be passed. */
    boolean touched() {
        return done().stream()
                .anyMatch(step ->
                        !step.takesOff().isEmpty() || !step.backBeforeStart().isEmpty());
    }
}
