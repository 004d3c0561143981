package org.pullproof.worth.decision.money;

import java.util.List;
import java.util.Set;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.problem.Cure;

/** What an end means for the money in a state. */
final class EndReader {
    private static final double WEEKS_A_MONTH = 52.0 / 12;

    private final Layout layout;
    private final CarWorth worth;
    private final Hazard hazard;
    private final double months;
    private final double resale;
    private final double[] discounts;
    private final double[] failures;

    EndReader(Layout layout, Scenario scenario) {
        this.layout = layout;
        worth = new CarWorth(scenario);
        hazard = new Hazard(scenario);
        months = scenario.value(Common.MONTHS_KEPT);
        resale = scenario.value(Common.RESALE_SHARE);
        List<Set<String>> sets = layout.faultSets();
        discounts = sets.stream().mapToDouble(worth::discount).toArray();
        failures = sets.stream()
                .mapToDouble(left -> hazard.aboveSound(Cure.NONE, left, months))
                .toArray();
    }

    Cell.End read(int leaf, int state) {
        LeafPlan plan = layout.leaves().get(leaf);
        double left = discounts[layout.left(leaf, state)];
        return switch (plan.end().ending()) {
            case KEEP -> whole(leaf, state, 0, failure(leaf, state), 0);
            case LAY_UP -> whole(leaf, state, 0, 0, months * WEEKS_A_MONTH);
            case SELL -> whole(leaf, state, worth.costOfSelling(left), 0, 0);
            case PARTS -> broken(plan, worth.parts());
            case WALK -> broken(plan, 0);
        };
    }

    private double failure(int leaf, int state) {
        return layout.leaves().get(leaf).end().cure() instanceof Cure.AnotherEngine other
                ? hazard.aboveSound(other, Set.of(), months)
                : failures[layout.left(leaf, state)];
    }

    private Cell.End whole(int leaf, int state, double selling, double failure, double laidUp) {
        LeafPlan plan = layout.leaves().get(leaf);
        double before = discounts[layout.faults(state)];
        double cureGain = before - discounts[layout.left(leaf, state)];
        return new Cell.End(
                worth.sound() - before,
                cureGain,
                resale,
                selling,
                worth.parts(),
                failure,
                plan.paysPrice(),
                plan.staysWithOwner(),
                laidUp);
    }

    private Cell.End broken(LeafPlan plan, double value) {
        return new Cell.End(value, 0, 0, 0, worth.parts(), 0, plan.paysPrice(), false, 0);
    }
}
