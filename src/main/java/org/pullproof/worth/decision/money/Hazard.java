package org.pullproof.worth.decision.money;

import java.util.Set;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.problem.Cure;
import org.pullproof.worth.decision.problem.FaultMoney;
import org.pullproof.worth.decision.problem.Problem;

/**
 * Failure while kept, m months:
 *
 * <pre>  H = 1 − (1 − h₀)^{m/12} · Π_{f left} (1 − h_f)^{m/12}</pre>
 *
 * <p>h_f × 2.5 for tired faults under hard pulls, at most 95 %; another engine has its own h in the place of h₀ and no fault left.
 * Only the part above a sound engine counts in money: H' = max(0, (1 − h₀)^{m/12} − (1 − H)).
 */
public final class Hazard {
    private static final double MONTHS_A_YEAR = 12;
    private static final double MOST = 0.95;

    private final Problem problem;
    private final double factor;

    public Hazard(Scenario scenario) {
        problem = scenario.problem();
        factor = scenario.value(Common.HAZARDS);
    }

    /** H, within so many months. */
    public double of(Cure cure, Set<String> left, double months) {
        double year = cure instanceof Cure.AnotherEngine other ? 1 - other.hazard() : 1 - sound();
        for (String fault : left) {
            year *= 1 - of(problem.fault(fault));
        }
        return 1 - Math.pow(year, months / MONTHS_A_YEAR);
    }

    /** H'. */
    double aboveSound(Cure cure, Set<String> left, double months) {
        double sound = Math.pow(1 - sound(), months / MONTHS_A_YEAR);
        return Math.max(0, sound - (1 - of(cure, left, months)));
    }

    private double sound() {
        return raised(problem.assumptions().baseHazard(), factor);
    }

    private double of(FaultMoney fault) {
        boolean hard = problem.owner().hardPulls() && fault.tired();
        return raised(fault.hazard(), factor * (hard ? problem.assumptions().hardPullFactor() : 1));
    }

    /** A hazard that is given as more than the most stays what it is. */
    private static double raised(double hazard, double by) {
        return by <= 1 ? hazard * by : Math.max(hazard, Math.min(MOST, hazard * by));
    }
}
