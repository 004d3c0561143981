package org.pullproof.worth.question;

import java.util.Optional;
import org.pullproof.car.Access;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.units.Money;
import org.pullproof.worth.decision.problem.Budget;
import org.pullproof.worth.decision.problem.OwnerInputs;
import org.pullproof.worth.decision.problem.Purchase;
import org.pullproof.worth.trade.Catalogue;

/**
 * The eight answers of the owner, with the starting values of the method where one is not told (judgement). The worth of the car with a
 * sound engine stands at the price asked until it is told.
 */
record OwnerSays(Car car, Catalogue catalogue, String currency) {
    /** Whether the car may be bought but is not yet. */
    boolean beforePurchase() {
        return car.access()
                .map(access -> access != Access.OWN_IT)
                .orElse(car.told(Fact.PRICE).isPresent());
    }

    /** Whether the worth of the car with a sound engine was told. */
    boolean worthTold() {
        return money(Fact.WORTH_SOUND).isPresent();
    }

    double worthSound() {
        return money(Fact.WORTH_SOUND).or(() -> money(Fact.PRICE)).orElseGet(() -> dollars("owner.worth-sound"));
    }

    double partsValue() {
        return catalogue.number("car.parts-share") * worthSound();
    }

    /** Money the car as it stands is at most: the price asked, else its worth. */
    boolean partsWorthwhile() {
        double car = beforePurchase() ? money(Fact.PRICE).orElseGet(this::worthSound) : worthSound();
        return partsValue() > catalogue.number("car.parts-offered") * car;
    }

    /**
     * @param spent money already spent, in the currency
     */
    OwnerInputs inputs(double spent) {
        return new OwnerInputs(
                worthSound(),
                !worthTold(),
                partsValue(),
                money(Fact.VALUE_PER_HP).orElseGet(() -> dollars("owner.value-per-hp")),
                money(Fact.HOUR_PRICE).orElseGet(() -> dollars("owner.hour-price")),
                money(Fact.WEEK_WITHOUT).orElseGet(() -> dollars("owner.week-without")),
                car.told(Fact.MONTHS).map(Double::parseDouble).orElseGet(() -> catalogue.number("owner.months")),
                car.told(Fact.HARD_PULLS).filter("yes"::equals).isPresent(),
                money(Fact.BUDGET).map(cap -> new Budget(cap, false)),
                beforePurchase()
                        ? Optional.of(new Purchase(money(Fact.PRICE), money(Fact.LEAST_PRICE)))
                        : Optional.empty(),
                spent);
    }

    private double dollars(String key) {
        return catalogue.number("rate.dollar") * catalogue.number(key);
    }

    /** What was told in the currency of the question; an amount in another is not converted. */
    private Optional<Double> money(Fact fact) {
        return car.money(fact)
                .filter(money -> money.currency().equals(currency))
                .map(Money::value);
    }
}
