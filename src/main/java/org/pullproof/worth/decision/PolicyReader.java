package org.pullproof.worth.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.pullproof.worth.decision.answer.PolicyStep;
import org.pullproof.worth.decision.money.PickPlace;
import org.pullproof.worth.decision.tree.Weights;

/** What an option picks at each of its choices, by name. */
final class PolicyReader {
    private final Weighed weighed;
    private final int option;
    private final int[] picks;

    PolicyReader(Weighed weighed, int option) {
        this.weighed = weighed;
        this.option = option;
        this.picks = weighed.weighing().picks(option, weighed.chances());
    }

    List<PolicyStep> steps() {
        List<PolicyStep> steps = new ArrayList<>();
        List<PickPlace> places = weighed.layout().places(option);
        for (int k = 0; k < picks.length; k++) {
            PickPlace place = places.get(k);
            String choice = place.choices().get(picks[k]);
            steps.add(new PolicyStep(
                    place.path(),
                    place.seen(),
                    picks[k],
                    choice,
                    place.turnBacks().contains(picks[k]),
                    reach(place)));
        }
        return steps;
    }

    /** Chance to come to a choice: of all leaves behind it, when the picks are kept. */
    private double reach(PickPlace place) {
        double[][] behind = new double[weighed.layout().leaves().size()][weighed.chances().length];
        place.leaves().forEach(leaf -> Arrays.fill(behind[leaf], 1));
        return Weights.dot(
                weighed.chances(), weighed.layout().plans().get(option).root().follow(picks, behind));
    }
}
