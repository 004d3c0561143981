package org.pullproof.tuneup;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pullproof.units.Sentence;

/**
 * Where the tune-up stands.
 *
 * @param answer the answer in one sentence
 * @param steps every step with its state, in order
 * @param offCar parts that are off the car now
 * @param startBlockedBy what stands in the way of starting the engine; empty if the gate is open
 * @param plugs the plugs known so far, with remarks
 * @param plan how the steps were chosen and how long they take
 * @param leftOff what stays off or open on purpose, with the reason: "breather hose: made a new one, comes Monday"
 * @param wireRemarks what is remarkable about the wires, one sentence each
 * @param parts what the planned steps use up, and what became of it
 * @param toBuy what of it is still to buy
 * @param settings how the engine is set
 * @param afterwards what is due after the tune-up
 */
public record TuneUpFindings(
        Sentence answer,
        List<StepState> steps,
        List<OffCar> offCar,
        List<Block> startBlockedBy,
        List<PlugFinding> plugs,
        Plan plan,
        List<String> leftOff,
        List<String> wireRemarks,
        List<PartFinding> parts,
        PartsToBuy toBuy,
        Settings settings,
        Afterwards afterwards) {
    public TuneUpFindings {
        steps = List.copyOf(steps);
        offCar = List.copyOf(offCar);
        startBlockedBy = List.copyOf(startBlockedBy);
        plugs = List.copyOf(plugs);
        leftOff = List.copyOf(leftOff);
        wireRemarks = List.copyOf(wireRemarks);
        parts = List.copyOf(parts);
    }

    /**
     * How the engine is set.
     *
     * @param told every setting with its figure
     * @param timing what the pieces of the timing add up to; empty while none is known
     * @param remarks what is remarkable, one sentence each
     */
    public record Settings(List<String> told, Optional<String> timing, List<String> remarks) {
        public Settings {
            told = List.copyOf(told);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * How the steps were chosen.
     *
     * @param choices plans this kind of engine offers, by name
     * @param because why the order is as it is, one sentence each
     * @param minutesLeft typical time of what is not done, minutes
     */
    public record Plan(Map<String, List<String>> choices, List<String> because, int minutesLeft) {
        /** Own garage hours run over: P90 over the typical time, judgement (trade defaults of Worth it: 2.6 over 1.6). */
        private static final double RUN_OVER = 2.6 / 1.6;

        public Plan {
            choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
            because = List.copyOf(because);
        }

        /** Minutes that nine of ten such jobs stay below; judgement. */
        public int minutesAtMost() {
            return (int) Math.round(minutesLeft * RUN_OVER);
        }
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
     *     and of added parts by name
     */
    public record StepState(Step step, State state, List<String> waitsFor) {
        /** Named at most; the gate itself says what else closes it. */
        private static final int MOST_NAMED = 3;

        /** The word at the end of a step's line: "done", "waits for h, i", "closed". */
        public String words() {
            if (state != State.WAITS) {
                return state.key();
            }
            if (waitsFor.size() <= MOST_NAMED && step.kind() != Step.Kind.START_GATE) {
                return "waits for " + String.join(", ", waitsFor);
            }
            return switch (step.kind()) {
                case START_GATE -> "closed";
                case RUNNING -> "waits for the start gate";
                case WORK -> "waits for " + waitsFor.size() + " steps";
            };
        }
    }

    /**
     * A part that is off the car.
     *
     * @param part what is off
     * @param step id of the step that took it off; empty for what the owner added
     * @param since when that step was ticked, or the part added
     * @param note where it lies, what belongs to it; may be empty
     * @param fitted cylinders on which it is back already; empty where not every cylinder has one
     * @param stays why it stays off on purpose, if it does
     */
    public record OffCar(
            String part,
            Optional<String> step,
            LocalDateTime since,
            String note,
            Optional<Set<Integer>> fitted,
            Optional<String> stays) {}

    /**
     * Something that stands in the way of the start.
     *
     * @param what what stands in the way: "battery lead: still off"
     * @param step id of its step; empty for what the owner added
     * @param part the part or check that may be left off with a reason; empty for the gate itself
     */
    public record Block(String what, Optional<String> step, Optional<String> part) {}

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
