package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.TuneUpFindings.Block;
import org.pullproof.tuneup.TuneUpFindings.State;
import org.pullproof.tuneup.TuneUpFindings.StepState;

/** The tune-up, step by step, and what stands in the way of the start. */
final class TuneUpRules {
    private static final int MINUTES_TO_PUT_A_PART_BACK = 5;

    private final Proposals proposals;

    TuneUpRules(Proposals proposals) {
        this.proposals = proposals;
    }

    List<Rule> inOrder() {
        return List.of(this::nextStep, this::putBack);
    }

    /** The step that is due. Who went to the dyno without finishing is not sent back, unless something is off the car. */
    private Optional<NextStep> nextStep(Situation now) {
        boolean pulled = !now.dyno().pulls().isEmpty();
        if (pulled && now.tuneUp().startIsOpen()) {
            return Optional.empty();
        }
        return now.tuneUp().steps().stream()
                .filter(step -> step.state() == State.NOW)
                .findFirst()
                .map(step -> proposals.step(step.step(), why(now), settles(now, step.step())));
    }

    private static String why(Situation now) {
        long done = now.tuneUp().doneCount();
        int all = now.tuneUp().steps().size();
        return done == 0
                ? "The tune-up begins with what it is like now; power is measured on an engine in tune."
                : "It is the next of the " + all + " steps in order; " + done + " are done.";
    }

    private static String settles(Situation now, Step step) {
        String freed = now.tuneUp().steps().stream()
                .filter(state -> state.waitsFor().equals(List.of(step.id())))
                .map(StepState::step)
                .map(Step::title)
                .limit(2)
                .collect(Collectors.joining("; "));
        return freed.isEmpty() ? "One step less before the start gate." : "Frees: " + freed + ".";
    }

    private Optional<NextStep> putBack(Situation now) {
        List<Block> blocks = now.tuneUp().startBlockedBy();
        if (blocks.isEmpty()) {
            return Optional.empty();
        }
        String what = blocks.stream().map(Block::what).limit(3).collect(Collectors.joining("; "));
        String more = blocks.size() > 3 ? "; and " + (blocks.size() - 3) + " more" : "";
        return Optional.of(proposals.work(
                blocks.size() * MINUTES_TO_PUT_A_PART_BACK,
                "gate",
                Stage.TUNE_UP,
                "Clear the way to the start gate",
                "In the way: " + what + more + ".",
                "Whether the engine may be started."));
    }
}
