package org.pullproof.worth.decision.money;

import java.util.Set;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.problem.Problem;

/**
 * What the car is worth to a buyer who is told what is known.
 *
 * <pre>  D(s) = Σ discounts of the faults, at most max(0, W − S)
 *   R = W − D(s) + max(D(s) − D(s'), ρ·E)</pre>
 *
 * <p>The market pays for a cured fault or for a bill, never for both.
 */
final class CarWorth {
    private final Problem problem;
    private final double sound;
    private final double parts;
    private final double factor;
    private final double friction;

    CarWorth(Scenario scenario) {
        problem = scenario.problem();
        sound = scenario.value(Common.WORTH_SOUND);
        parts = problem.owner().partsValue();
        factor = scenario.value(Common.DISCOUNTS);
        friction = problem.assumptions().saleFriction();
    }

    /** S. */
    double parts() {
        return parts;
    }

    /** W. */
    double sound() {
        return sound;
    }

    /** D. */
    double discount(Set<String> faults) {
        double sum = 0;
        for (String fault : faults) {
            sum += problem.fault(fault).discount();
        }
        return Math.min(Math.max(0, sound - parts), factor * sum);
    }

    /** φ·max(0, W − D). */
    double costOfSelling(double discount) {
        return friction * Math.max(0, sound - discount);
    }
}
