package org.pullproof.worth.decision;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.pullproof.worth.decision.answer.Input;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.money.Scenario;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.decision.problem.Purchase;

/** The main inputs of a problem, how far each is moved, and which of them the money follows in a straight line. */
final class Inputs {
    /** Inputs that leave all draws as they are; the net is linear in them. */
    private static final Set<Common> LINEAR =
            EnumSet.of(Common.VALUE_PER_HP, Common.HOUR_PRICE, Common.WEEK_WITHOUT, Common.PRICE);

    private static final double TIMES_VALUE = 5;
    private static final double MOST_SHARE = 0.95;
    private static final double FIFTH = 1.2;
    private static final double TENTH = 1.1;

    private Inputs() {}

    /** How far a flip is looked for. */
    record Range(double low, double high) {}

    static List<Input> of(Problem problem) {
        List<Input> inputs = new ArrayList<>();
        for (Common input : Common.values()) {
            boolean known = input != Common.PRICE
                    || problem.owner().purchase().flatMap(Purchase::asked).isPresent();
            if (known) {
                inputs.add(input);
            }
        }
        for (String fault : problem.faults().keySet()) {
            double chance = problem.chanceOf(fault);
            if (chance > 0 && chance < 1) {
                inputs.add(new Input.Chance(fault));
            }
        }
        return inputs;
    }

    static boolean keepsDraws(Input input) {
        return !(input instanceof Common common) || LINEAR.contains(common);
    }

    /** Worth of the car, price and the week without it go to five times their value. */
    static Range range(Input input, double now) {
        if (!(input instanceof Common common)) {
            return new Range(0.001, 0.999);
        }
        return switch (common) {
            case VALUE_PER_HP -> new Range(0, 500);
            case HOUR_PRICE -> new Range(0, 150);
            case WORTH_SOUND, WEEK_WITHOUT, PRICE -> new Range(0, TIMES_VALUE * now);
            case MONTHS_KEPT -> new Range(0, 120);
            case RESALE_SHARE -> new Range(0, MOST_SHARE);
            case REPAIR_OVERRUN, REBUILD_OVERRUN, HOURS_OVERRUN -> new Range(0.1, 4);
            case GAINS, HAZARDS, DISCOUNTS -> new Range(0, 4);
        };
    }

    /** The scenario with an input a fifth higher: the odds of a chance, the worth of the car by a tenth. */
    static Scenario raised(Scenario scenario, Input input) {
        double now = scenario.value(input);
        if (input instanceof Input.Chance) {
            double odds = FIFTH * now / (1 - now);
            return scenario.with(input, odds / (1 + odds));
        }
        if (input == Common.RESALE_SHARE) {
            return scenario.with(input, Math.min(MOST_SHARE, FIFTH * now));
        }
        return scenario.with(input, now * (input == Common.WORTH_SOUND ? TENTH : FIFTH));
    }
}
