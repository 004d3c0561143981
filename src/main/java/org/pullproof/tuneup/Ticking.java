package org.pullproof.tuneup;

import java.time.LocalDateTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.tuneup.Step.Kind;

/** Ticks steps, takes ticks away and notes parts, by the rules of one graph. Immutable. */
public final class Ticking {
    private final StepGraph whole;

    public Ticking(StepGraph whole) {
        this.whole = whole;
    }

    private PartNames names(TuneUp tuneUp) {
        return new PartNames(whole, tuneUp.bench());
    }

    /**
     * Ticks a step. Parts it takes off are off from now on, even if they had been back before.
     *
     * @throws IllegalArgumentException if there is no such step, if a step it needs is not done, or if it is the start gate
     *     or runs the engine while something stands in the way of the start
     */
    public TuneUp tick(TuneUp tuneUp, String id, LocalDateTime when) {
        StepGraph graph = planned(tuneUp, id);
        Step step = graph.require(id);
        requireNeeds(tuneUp, step);
        if (step.kind() != Kind.WORK) {
            requireOpen(graph, tuneUp, step);
        }
        TuneUp next = tuneUp;
        for (String part : PartNames.touched(step).toList()) {
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
        whole.require(id);
        String above = new StepPlan(whole, tuneUp)
                .graph().steps().stream()
                        .filter(step -> tuneUp.done().containsKey(step.id())
                                && step.needs().contains(id))
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
        return tuneUp.withBack(names(tuneUp).require(part));
    }

    /**
     * Notes that a part is off again after all.
     *
     * @throws IllegalArgumentException as {@link #back} does, or if a ticked step fitted the part
     */
    public TuneUp off(TuneUp tuneUp, String part) {
        names(tuneUp).require(part);
        for (Step step : whole.steps()) {
            if (tuneUp.done().containsKey(step.id()) && step.putsBack().contains(part)) {
                throw new IllegalArgumentException(
                        part + ": fitted by step " + step.id() + ", which is ticked: take that tick away first.");
            }
        }
        return tuneUp.withoutBack(part);
    }

    /** The plan, and in it the step even where it was not wanted: who ticks it has done it. */
    private StepGraph planned(TuneUp tuneUp, String id) {
        whole.require(id);
        Set<String> wanted = new LinkedHashSet<>(tuneUp.wanted());
        if (!wanted.isEmpty()) {
            wanted.add(id);
        }
        return new StepPlan(whole, tuneUp.withWanted(wanted)).graph();
    }

    /**
     * Leaves a part off, or a check open, on purpose; it no longer stands in the way of the start.
     *
     * @param reason stands in the report
     * @throws IllegalArgumentException as {@link #back} does, or without a reason
     */
    public TuneUp leaveOff(TuneUp tuneUp, String part, String reason) {
        return tuneUp.withLeftOff(names(tuneUp).require(part), reason);
    }

    /**
     * Chooses what is to be done.
     *
     * @param steps a plan of the graph by its name, {@link StepGraph#FULL} or "all", or step ids
     * @throws IllegalArgumentException naming the plans and steps there are
     */
    public TuneUp want(TuneUp tuneUp, List<String> steps) {
        Set<String> wanted = new LinkedHashSet<>();
        for (String name : steps) {
            if (!name.equals("all") && !name.equals(StepGraph.FULL)) {
                wanted.addAll(whole.plans().getOrDefault(name, List.of(name)));
            }
        }
        wanted.forEach(this::requirePlanned);
        return tuneUp.withWanted(wanted);
    }

    private void requirePlanned(String id) {
        if (whole.step(id).isEmpty()) {
            throw new IllegalArgumentException("\"" + id
                    + "\" is no plan and no step of this tune-up; the plans are " + StepGraph.FULL + ", "
                    + String.join(", ", whole.plans().keySet()) + "; the steps are "
                    + String.join(" ", whole.steps().stream().map(Step::id).toList()));
        }
    }

    private static void requireNeeds(TuneUp tuneUp, Step step) {
        String missing = step.needs().stream()
                .filter(need -> !tuneUp.done().containsKey(need))
                .collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException("Step " + step.id() + " waits for " + missing + ": tick that first.");
        }
    }

    private static void requireOpen(StepGraph graph, TuneUp tuneUp, Step step) {
        String inTheWay = new OffCarShelf(graph, tuneUp)
                .inTheWay().stream().map(standing -> standing.block().what()).collect(Collectors.joining("; "));
        if (!inTheWay.isEmpty()) {
            throw new IllegalArgumentException(
                    "Step " + step.id() + " waits, something stands in the way of the start. " + inTheWay + ".");
        }
    }
}
