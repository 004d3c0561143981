package org.pullproof.worth.decision;

import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.problem.Problem;

/**
 * Answers whether an engine is worth more money, by the method of {@code docs/methods/worth.md}. Immutable and safe between
 * threads; the same seed gives the same answer.
 */
public final class Decision {
    private final long seed;

    public Decision(long seed) {
        this.seed = seed;
    }

    public Answer answer(Problem problem) {
        return answer(problem, Progress.UNWATCHED);
    }

    /**
     * The whole answer; takes a few tenths of a second, so screens ask for it in the background.
     *
     * @throws java.util.concurrent.CancellationException if the one who watches throws it
     */
    public Answer answer(Problem problem, Progress progress) {
        throw new UnsupportedOperationException("Not written yet for seed " + seed + problem + progress);
    }
}
