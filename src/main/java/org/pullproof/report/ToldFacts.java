package org.pullproof.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.car.FactWords;
import org.pullproof.report.ReportModel.Item;

/** What the owner told that no reading tells: what may be shown to anybody, and what concerns his purse alone. */
record ToldFacts(Car car) {
    private static final Set<Fact> OF_THE_PURSE = EnumSet.of(
            Fact.PRICE,
            Fact.LEAST_PRICE,
            Fact.SMALLEST_DIFFERENCE,
            Fact.WORTH_SOUND,
            Fact.VALUE_PER_HP,
            Fact.HOUR_PRICE,
            Fact.MONTHS,
            Fact.BUDGET,
            Fact.WEEK_WITHOUT,
            Fact.HARD_PULLS,
            Fact.SPENT);

    /** For anybody to read. */
    List<Item> ofTheCar() {
        return items(EnumSet.complementOf(EnumSet.copyOf(OF_THE_PURSE)));
    }

    /** Prices and wishes: they stand on the page on money only. */
    List<Item> ofThePurse() {
        return items(OF_THE_PURSE);
    }

    /** One of them in words. */
    Optional<String> said(Fact fact) {
        return car.told(fact).map(text -> FactWords.of(fact, text));
    }

    private List<Item> items(Set<Fact> facts) {
        return facts.stream()
                .flatMap(fact -> car.told(fact).stream()
                        .map(text -> new Item(fact.key(), fact.words(), FactWords.of(fact, text))))
                .toList();
    }
}
