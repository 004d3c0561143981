package org.pullproof.worth;

import org.pullproof.worth.decision.Progress;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.trade.Catalogue;

/**
 * The weighing of options for one state of a session. It is begun only when somebody asks, and each part is worked out once; safe
 * between threads.
 */
public interface Weighing {
    /** Every number that counts, the owner's own in the place of the usual ones. */
    Catalogue catalogue();

    /** The question. Takes some hundredths of a second the first time. */
    Problem problem();

    /**
     * The answer. Takes a few tenths of a second the first time, so screens ask for it in the background.
     *
     * @throws java.util.concurrent.CancellationException if the one who watches throws it
     */
    Answer answer(Progress progress);

    /** The answer, with nobody watching. */
    default Answer answer() {
        return answer(Progress.UNWATCHED);
    }
}
