package org.pullproof.worth.decision.problem;

import java.util.Optional;

/**
 * The car is not bought yet.
 *
 * @param asked the price asked; absent if unknown: then the highest price is the answer
 * @param least the least the seller takes, if known
 */
public record Purchase(Optional<Double> asked, Optional<Double> least) {
    public Purchase {
        asked.ifPresent(price -> Check.notNegative("The price asked", price));
        least.ifPresent(price -> Check.notNegative("The least price of the seller", price));
    }
}
