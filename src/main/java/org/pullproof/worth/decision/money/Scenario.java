package org.pullproof.worth.decision.money;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.pullproof.worth.decision.answer.Input;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.problem.HiddenState;
import org.pullproof.worth.decision.problem.OwnerInputs;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.decision.problem.Purchase;

/**
 * A problem with its main inputs as they are, or one of them moved. Immutable.
 *
 * @see Input
 */
public final class Scenario {
    private static final Set<Common> FACTORS = Set.of(
            Common.REPAIR_OVERRUN,
            Common.REBUILD_OVERRUN,
            Common.HOURS_OVERRUN,
            Common.GAINS,
            Common.HAZARDS,
            Common.DISCOUNTS);

    private final Problem problem;
    private final Map<Common, Double> values;
    private final double[] chances;

    private Scenario(Problem problem, Map<Common, Double> values, double[] chances) {
        this.problem = problem;
        this.values = values;
        this.chances = chances;
    }

    /** The problem as it is; a price that is not known counts as 0. */
    public static Scenario of(Problem problem) {
        OwnerInputs owner = problem.owner();
        Map<Common, Double> values = new EnumMap<>(Common.class);
        FACTORS.forEach(factor -> values.put(factor, 1.0));
        values.put(Common.VALUE_PER_HP, owner.valuePerHp());
        values.put(Common.HOUR_PRICE, owner.hourPrice());
        values.put(Common.WEEK_WITHOUT, owner.weekWithout());
        values.put(Common.WORTH_SOUND, owner.worthSound());
        values.put(Common.MONTHS_KEPT, owner.monthsKept());
        values.put(Common.RESALE_SHARE, problem.assumptions().resaleShare());
        values.put(Common.PRICE, owner.purchase().flatMap(Purchase::asked).orElse(0.0));
        List<HiddenState> states = problem.states();
        return new Scenario(
                problem,
                values,
                states.stream().mapToDouble(HiddenState::chance).toArray());
    }

    public Problem problem() {
        return problem;
    }

    public double value(Input input) {
        if (input instanceof Input.Chance chance) {
            return chanceOf(chance.fault());
        }
        return Objects.requireNonNull(values.get((Common) input), input::key);
    }

    /** p(s), by state; shared, not to be written to. */
    public double[] chances() {
        return chances;
    }

    /** The same with one input moved. The chance of a fault moves as a whole: states with it are scaled, the others too. */
    public Scenario with(Input input, double value) {
        if (input instanceof Input.Chance chance) {
            return new Scenario(problem, values, scaled(chance.fault(), value));
        }
        Map<Common, Double> moved = new EnumMap<>(values);
        moved.put((Common) input, value);
        return new Scenario(problem, moved, chances);
    }

    /** The states without this fault, in proportion. */
    public Scenario without(String fault) {
        return new Scenario(problem, values, scaled(fault, 0));
    }

    boolean agrees(Scenario other, Common... inputs) {
        for (Common input : inputs) {
            if (value(input) != other.value(input)) {
                return false;
            }
        }
        return true;
    }

    private double chanceOf(String fault) {
        double sum = 0;
        for (int s = 0; s < chances.length; s++) {
            sum += problem.states().get(s).has(fault) ? chances[s] : 0;
        }
        return sum;
    }

    private double[] scaled(String fault, double to) {
        double now = chanceOf(fault);
        double[] scaled = new double[chances.length];
        for (int s = 0; s < chances.length; s++) {
            scaled[s] = chances[s] * (problem.states().get(s).has(fault) ? to / now : (1 - to) / (1 - now));
        }
        return scaled;
    }
}
