package org.pullproof.tuneup;

import java.util.List;
import java.util.Optional;
import org.pullproof.units.Money;

/**
 * What the tune-up still needs bought.
 *
 * @param items in the order of the steps
 */
public record PartsToBuy(List<Item> items) {
    public PartsToBuy {
        items = List.copyOf(items);
    }

    /**
     * Something to buy.
     *
     * @param part its name
     * @param price what it costs about
     * @param note which one fits; may be empty
     * @param judged whether the price is judgement, not the owner's
     */
    public record Item(String part, Money price, String note, boolean judged) {}

    /** What all of it costs about; empty if there is nothing to buy or the prices are in several currencies. */
    public Optional<Money> total() {
        List<String> currencies =
                items.stream().map(item -> item.price().currency()).distinct().toList();
        double sum = items.stream().mapToDouble(item -> item.price().value()).sum();
        return currencies.size() == 1 ? Optional.of(Money.of(sum, currencies.get(0))) : Optional.empty();
    }
}
