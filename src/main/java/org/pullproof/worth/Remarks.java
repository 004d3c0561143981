package org.pullproof.worth;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;

/** What the money could not be counted in: amounts of another currency are named, not converted. */
record Remarks(MoneyBook book, Car car, List<Spending> partsAndChanges, String currency, boolean rateTold) {
    List<String> all() {
        List<String> remarks = new ArrayList<>();
        Stream.concat(book.spent().stream(), partsAndChanges.stream())
                .filter(spending -> other(spending.amount()))
                .forEach(spending -> remarks.add(notCounted(spending.what(), spending.amount())));
        Stream.of(
                        Fact.BUDGET,
                        Fact.SPENT,
                        Fact.PRICE,
                        Fact.LEAST_PRICE,
                        Fact.WORTH_SOUND,
                        Fact.VALUE_PER_HP,
                        Fact.HOUR_PRICE,
                        Fact.WEEK_WITHOUT)
                .forEach(fact -> car.money(fact)
                        .filter(this::other)
                        .ifPresent(money -> remarks.add(notCounted(fact.words(), money))));
        book.options().stream()
                .filter(option -> other(option.likely()))
                .forEach(option -> remarks.add(notCounted(option.name(), option.likely())));
        if (!currency.equals("USD") && !rateTold) {
            remarks.add("The program's own figures are US dollars and are counted as so many " + currency
                    + " each: put the rate in its place among the judgements.");
        }
        return remarks;
    }

    private boolean other(Money money) {
        return !money.currency().equals(currency);
    }

    private String notCounted(String what, Money money) {
        return what + ": " + Figures.money(money) + " is not counted, the figures here are in " + currency + ".";
    }
}
