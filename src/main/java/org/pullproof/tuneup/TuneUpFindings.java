package org.pullproof.tuneup;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Sentence;

/**
 * Where the tune-up stands.
 *
 * @param answer the answer in one sentence
 * @param steps every step with its state, in order
 * @param offCar parts that are off the car now
 * @param startBlockedBy what stands in the way of starting the engine; empty if the gate is open
 * @param plugs the plugs known so far, with remarks
 */
public record TuneUpFindings(
        Sentence answer,
        List<StepState> steps,
        List<OffCar> offCar,
        List<Block> startBlockedBy,
        List<PlugFinding> plugs) {
    public TuneUpFindings {
        steps = List.copyOf(steps);
        offCar = List.copyOf(offCar);
        startBlockedBy = List.copyOf(startBlockedBy);
        plugs = List.copyOf(plugs);
    }

    /** How a step stands; word first, shape second (look.md 5). */
    public enum State {
        DONE("done"),
        NOW("now"),
        READY("ready"),
        WAITS("waits");

        private final String key;

        State(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /**
     * A step and how it stands.
     *
     * @param step the step
     * @param state how it stands
     * @param waitsFor ids of the needs that are not done, and for the gate and what runs of the steps whose parts are not back
     */
    public record StepState(Step step, State state, List<String> waitsFor) {}

    /**
     * A part that is off the car.
     *
     * @param part what is off
     * @param step id of the step that took it off
     * @param since when that step was ticked
     */
    public record OffCar(String part, String step, LocalDateTime since) {}

    /**
     * Something that stands in the way of the start.
     *
     * @param what what stands in the way: "battery lead: still off"
     * @param step id of its step
     */
    public record Block(String what, String step) {}

    /**
     * A plug with what is remarkable about it.
     *
     * @param plug what is known
     * @param remark what differs from the profile's range or from the others, if anything
     */
    public record PlugFinding(PlugRecord plug, Optional<String> remark) {}

    public long doneCount() {
        return steps.stream().filter(step -> step.state() == State.DONE).count();
    }

    public boolean startIsOpen() {
        return startBlockedBy.isEmpty();
    }
}
