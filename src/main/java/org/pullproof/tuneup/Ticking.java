package org.pullproof.tuneup;

import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.tuneup.Step.Kind;

/** Ticks steps, takes ticks away and notes parts, by the rules of one graph. Immutable. */
public final class Ticking {
    private final StepGraph graph;

    public Ticking(StepGraph graph) {
        this.graph = graph;
    }

    /**
     * Ticks a step. Parts it takes off are off from now on, even if they had been back before.
     *
     * @throws IllegalArgumentException if there is no such step, if a step it needs is not done, or if it is the start gate
     *     or runs the engine while something stands in the way of the start
     */
    public TuneUp tick(TuneUp tuneUp, String id, LocalDateTime when) {
        Step step = graph.require(id);
        requireNeeds(tuneUp, step);
        if (step.kind() != Kind.WORK) {
            requireOpen(tuneUp, step);
        }
        TuneUp next = tuneUp;
        for (String part : touched(step)) {
            next = next.withoutBack(part);
        }
        return next.withDone(id, when);
    }

    /**
     * Takes a tick away.
     *
     * @throws IllegalArgumentException if there is no such step, or if a ticked step needs it
     */
    public TuneUp untick(TuneUp tuneUp, String id) {
        graph.require(id);
        String above = graph.steps().stream()
                .filter(step ->
                        tuneUp.done().containsKey(step.id()) && step.needs().contains(id))
                .map(Step::id)
                .collect(Collectors.joining(", "));
        if (!above.isEmpty()) {
            throw new IllegalArgumentException(
                    "Step " + id + " came before " + above + ", which is ticked: take that tick away first.");
        }
        return tuneUp.withoutDone(id);
    }

    /**
     * Notes that a part is back on the car, or that a check is confirmed.
     *
     * @throws IllegalArgumentException naming the parts there are, if no step knows it
     */
    public TuneUp back(TuneUp tuneUp, String part) {
        return tuneUp.withBack(requirePart(part));
    }

    /**
     * Notes that a part is off again after all.
     *
     * @throws IllegalArgumentException as {@link #back} does, or if a ticked step fitted the part
     */
    public TuneUp off(TuneUp tuneUp, String part) {
        requirePart(part);
        for (Step step : graph.steps()) {
            if (tuneUp.done().containsKey(step.id()) && step.putsBack().contains(part)) {
                throw new IllegalArgumentException(
                        part + ": fitted by step " + step.id() + ", which is ticked: take that tick away first.");
            }
        }
        return tuneUp.withoutBack(part);
    }

    private void requireNeeds(TuneUp tuneUp, Step step) {
        String missing = step.needs().stream()
                .filter(need -> !tuneUp.done().containsKey(need))
                .collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException("Step " + step.id() + " waits for " + missing + ": tick that first.");
        }
    }

    private void requireOpen(TuneUp tuneUp, Step step) {
        String inTheWay = new OffCarShelf(graph, tuneUp)
                .inTheWay().stream().map(standing -> standing.block().what()).collect(Collectors.joining("; "));
        if (!inTheWay.isEmpty()) {
            throw new IllegalArgumentException(
                    "Step " + step.id() + " waits, something stands in the way of the start. " + inTheWay + ".");
        }
    }

    private String requirePart(String part) {
        List<String> known = graph.steps().stream()
                .flatMap(step -> touched(step).stream())
                .distinct()
                .toList();
        if (!known.contains(part)) {
            throw new IllegalArgumentException(
                    "\"" + part + "\" is no part of this tune-up; its parts are " + String.join(", ", known) + ".");
        }
        return part;
    }

    private static List<String> touched(Step step) {
        return Stream.concat(step.takesOff().stream(), step.backBeforeStart().stream())
                .distinct()
                .toList();
    }
}
