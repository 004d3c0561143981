package org.pullproof.worth.decision;

import org.pullproof.worth.decision.draws.Streams;

/**
 * The same question on fewer draws, for inputs that change the draws themselves. Few are enough to see what an input does, as all
 * scenarios meet the same ones.
 */
final class Reruns {
    static final int FEW = 500;
    private static final int MORE = 4;
    private static final int MOST = FEW * MORE * MORE * MORE;

    private final Weighed few;
    private final Weighed agreeing;

    Reruns(Weighed answer, long seed) {
        few = answer.drawn(new Streams(seed, FEW));
        int best = answer.best().option();
        Weighed base = few;
        for (int size = FEW * MORE; base.best().option() != best && size <= MOST; size *= MORE) {
            base = answer.drawn(new Streams(seed, size));
        }
        agreeing = base;
    }

    /** On 500 draws. */
    Weighed few() {
        return few;
    }

    /** On as many draws as it takes to name the best option of the answer (one may stand on the edge of the budget). */
    Weighed agreeing() {
        return agreeing;
    }
}
