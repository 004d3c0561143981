package org.pullproof.tuneup;

import org.pullproof.units.Money;

/**
 * Something a step uses up.
 *
 * @param name what it is, without a maker: "spark plugs"
 * @param price what all of it costs about; judgement until the owner says otherwise
 */
public record Consumable(String name, Money price) {
    public Consumable {
        if (name.isBlank()) {
            throw new IllegalArgumentException("A part to buy has a name");
        }
    }
}
