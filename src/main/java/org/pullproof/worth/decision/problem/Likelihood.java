package org.pullproof.worth.decision.problem;

import java.util.List;

/**
 * A result and how likely each state makes it.
 *
 * @param name the result: "bore scored"
 * @param chances P(result | state), in the order of {@link Problem#states}
 */
public record Likelihood(String name, List<Double> chances) {
    public Likelihood {
        Check.named("A result", name);
        chances = List.copyOf(chances);
        chances.forEach(chance -> Check.chance("The chance of \"" + name + "\" in a state", chance));
    }

    /** Whether each state settles if this result comes. */
    public boolean isSure() {
        return chances.stream().allMatch(chance -> chance == 0 || chance == 1);
    }

    /** The chances as a row of a table; a new one each time. */
    public double[] row() {
        return chances.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
