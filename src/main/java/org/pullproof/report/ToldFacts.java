package org.pullproof.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pullproof.car.Access;
import org.pullproof.car.Car;
import org.pullproof.car.CompressionRule;
import org.pullproof.car.Fact;
import org.pullproof.car.Runs;
import org.pullproof.report.ReportModel.Item;
import org.pullproof.units.Figures;
import org.pullproof.units.RpmRange;

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
        return car.told(fact).map(text -> words(fact, text));
    }

    private List<Item> items(Set<Fact> facts) {
        return facts.stream()
                .flatMap(fact ->
                        car.told(fact).stream().map(text -> new Item(fact.key(), fact.words(), words(fact, text))))
                .toList();
    }

    private static String range(RpmRange band) {
        return Figures.number(band.fromRpm(), 0) + " to " + Figures.number(band.toRpm(), 0) + Figures.NO_BREAK_SPACE
                + "rpm";
    }

    private String words(Fact fact, String text) {
        return switch (fact.kind()) {
            case ACCESS -> Access.of(text).words();
            case RUNS -> Runs.of(text).words();
            case MONEY -> car.money(fact).map(Figures::money).orElse(text);
            case LENGTH -> car.quantity(fact).map(Wording::typed).orElse(text);
            case RULE -> CompressionRule.of(text).words();
            case BAND -> car.band().map(ToldFacts::range).orElse(text);
            case PERCENT, NUMBER, YES_NO, WORDS -> text;
        };
    }
}
