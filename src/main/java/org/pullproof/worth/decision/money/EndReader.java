package org.pullproof.worth.decision.money;

import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.HiddenState;

/** What an end means for the money in a state. */
final class EndReader {
    private static final double WEEKS_A_MONTH = 52.0 / 12;

    private final CarWorth worth;
    private final Hazard hazard;
    private final double months;
    private final double resale;

    EndReader(Scenario scenario) {
        worth = new CarWorth(scenario);
        hazard = new Hazard(scenario);
        months = scenario.value(Common.MONTHS_KEPT);
        resale = scenario.value(Common.RESALE_SHARE);
    }

    Cell.End read(LeafPlan leaf, HiddenState state) {
        Ending ending = leaf.end().ending();
        return switch (ending) {
            case KEEP -> whole(leaf, state, 0, failure(leaf, state), 0);
            case LAY_UP -> whole(leaf, state, 0, 0, months * WEEKS_A_MONTH);
            case SELL -> whole(leaf, state, worth.costOfSelling(leaf.left(state)), 0, 0);
            case PARTS -> broken(leaf, worth.parts());
            case WALK -> broken(leaf, 0);
        };
    }

    private double failure(LeafPlan leaf, HiddenState state) {
        return hazard.aboveSound(leaf.end().cure(), leaf.left(state), months);
    }

    private Cell.End whole(LeafPlan leaf, HiddenState state, double selling, double failure, double laidUp) {
        double cureGain = worth.discount(state.faults()) - worth.discount(leaf.left(state));
        boolean waits = leaf.end().ending() != Ending.SELL;
        return new Cell.End(
                worth.with(state.faults()),
                cureGain,
                resale,
                selling,
                worth.parts(),
                failure,
                leaf.paysPrice(),
                waits,
                laidUp);
    }

    private Cell.End broken(LeafPlan leaf, double value) {
        return new Cell.End(value, 0, 0, 0, worth.parts(), 0, leaf.paysPrice(), false, 0);
    }
}
