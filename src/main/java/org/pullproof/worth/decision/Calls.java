package org.pullproof.worth.decision;

import java.util.Arrays;
import java.util.Optional;
import org.pullproof.worth.decision.answer.Call;
import org.pullproof.worth.decision.answer.Lead;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.tree.Best;
import org.pullproof.worth.decision.tree.Weights;

/** Which of the four calls it is: stop spending if it applies, else too close, else walk away, else clear. */
final class Calls {
    /** Rounding of chances. */
    private static final double ROUNDING = 1e-9;

    private final Weighed weighed;
    private final Best best;
    private final double smallestSum;

    Calls(Weighed weighed, Best best, double smallestSum) {
        this.weighed = weighed;
        this.best = best;
        this.smallestSum = smallestSum;
    }

    Call call(OptionAnswer row, Optional<Lead> lead) {
        boolean owned = weighed.problem().owner().purchase().isEmpty();
        if (owned && row.cost().p50() <= smallestSum && keepsTheCar()) {
            return Call.STOP_SPENDING;
        }
        if (lead.isPresent() && !lead.get().isSettled()) {
            return Call.TOO_CLOSE;
        }
        boolean walks = !owned && row.option().role() == Option.Role.REFERENCE;
        return walks ? Call.WALK_AWAY : Call.CLEAR;
    }

    /** Whether the best option, as it is followed, ends with the car kept whatever is seen. */
    private boolean keepsTheCar() {
        double[] chances = weighed.chances();
        int[] picks = weighed.weighing().picks(best.option(), chances);
        double[][] kept = new double[weighed.layout().leaves().size()][chances.length];
        for (int leaf = 0; leaf < kept.length; leaf++) {
            Ending ending = weighed.layout().leaves().get(leaf).end().ending();
            Arrays.fill(kept[leaf], ending == Ending.KEEP || ending == Ending.LAY_UP ? 1 : 0);
        }
        double[] share = weighed.layout().plans().get(best.option()).root().follow(picks, kept);
        return Weights.dot(chances, share) >= 1 - ROUNDING;
    }
}
