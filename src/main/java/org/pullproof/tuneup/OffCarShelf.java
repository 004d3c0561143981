package org.pullproof.tuneup;

import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
            step.takesOff().stream()
                    .filter(part -> !back.contains(part))
                    .forEach(part -> parts.put(
                            part, off(part, Optional.of(step.id()), since.getOrDefault(step.id(), LocalDateTime.MIN))));
        }
        added().forEach(part -> parts.put(part.name(), off(part.name(), Optional.empty(), part.since())));
        return List.copyOf(parts.values());
    }

    private OffCar off(String part, Optional<String> step, LocalDateTime since) {
        ShelfNote note = tuneUp.bench().note(part);
        return new OffCar(
                part,
                step,
                since,
                note.note(),
                new PartNames(graph, tuneUp.bench()).eachCylinder(part) ? Optional.of(note.fitted()) : Optional.empty(),
                Optional.ofNullable(tuneUp.leftOff().get(part)));
    }

    private Stream<AddedPart> added() {
        return tuneUp.bench().added().stream().filter(part -> !back.contains(part.name()));
    }

    /** Parts that must be back and checks that must be confirmed before the engine starts. */
    List<Standing> inTheWay() {
        Map<String, Standing> standing = new LinkedHashMap<>();
        for (Step step : done()) {
            for (String part : step.backBeforeStart()) {
                if (standsInTheWay(part)) {
                    standing.put(
                            part,
                            new Standing(
                                    part,
                                    Optional.of(step.id()),
                                    step.takesOff().contains(part),
                                    tuneUp.bench().note(part).fitted()));
                }
            }
        }
        added().filter(part -> standsInTheWay(part.name()))
                .forEach(
                        part -> standing.put(part.name(), new Standing(part.name(), Optional.empty(), true, Set.of())));
        return List.copyOf(standing.values());
    }

    private boolean standsInTheWay(String part) {
        return !back.contains(part) && !tuneUp.leftOff().containsKey(part);
    }

    /**
     * @param name of a part or a check
     * @param step id of its step; empty for what the owner added
     * @param off whether it is a part that is off, else a check that nobody confirmed
     * @param fitted cylinders on which it is back already
     */
    record Standing(String name, Optional<String> step, boolean off, Set<Integer> fitted) {
        Block block() {
            return new Block(name + ": " + how(), step, Optional.of(name));
        }

        private String how() {
            if (!off) {
                return "not confirmed";
            }
            return fitted.isEmpty()
                    ? "still off"
                    : "still off, back on "
                            + fitted.stream().map(String::valueOf).collect(Collectors.joining(", ")) + " only";
        }
    }

    /** Whether parts were touched since, so that the start gate has to be passed. */
    boolean touched() {
        return !tuneUp.bench().added().isEmpty()
                || done().stream()
                        .anyMatch(step -> !step.takesOff().isEmpty()
                                || !step.backBeforeStart().isEmpty());
    }
}
