package org.pullproof.worth.decision.problem;

import java.util.Optional;

/**
 * What one fault does to the money (judgement).
 *
 * @param words what it is called in a sentence: "a burnt exhaust valve"
 * @param discount what a buyer who knows takes off the price
 * @param hazard h_f, chance that it makes the engine fail in 12 months, below 1
 * @param restores what curing it gives back, percent of band power
 * @param tired whether hard pulls raise its hazard
 * @param read whether readings speak for it, so that it may be named to the seller
 * @param cureCost what its cheapest full cure costs a buyer, if known: a smaller discount is marked
 */
public record FaultMoney(
        String words,
        double discount,
        double hazard,
        Normal restores,
        boolean tired,
        boolean read,
        Optional<Double> cureCost) {
    public FaultMoney {
        Check.named("A fault", words);
        Check.notNegative("The discount for " + words, discount);
        Check.shareBelowOne("The hazard of " + words, hazard);
    }
}
