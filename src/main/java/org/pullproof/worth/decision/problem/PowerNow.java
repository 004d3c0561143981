package org.pullproof.worth.decision.problem;

import java.util.Optional;

/**
 * P_now, what gains are percent of.
 *
 * @param hp band power at the wheels, corrected, positive
 * @param estimated whether it was not measured but follows from the displacement
 * @param elevationMetres where the car lives, if that is high enough that fewer hp are felt than are counted
 */
public record PowerNow(double hp, boolean estimated, Optional<Double> elevationMetres) {
    public PowerNow {
        Check.positive("The power now", hp);
    }

    public static PowerNow measured(double hp) {
        return new PowerNow(hp, false, Optional.empty());
    }
}
