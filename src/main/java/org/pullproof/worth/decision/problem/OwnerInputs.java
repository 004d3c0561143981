package org.pullproof.worth.decision.problem;

import java.util.Optional;

/**
 * What only the owner can say.
 *
 * @param worthSound W, worth of the car if its engine were sound, positive
 * @param worthAssumed whether W was not answered and stands at the asked price instead
 * @param partsValue S, worth of the car for parts, not negative
 * @param valuePerHp v, worth of one hp at the wheels in driving
 * @param hourPrice c_h, price of an own hour, 0 allowed
 * @param weekWithout u, price of a week without the car
 * @param monthsKept months the car is kept, not negative
 * @param hardPulls whether the engine is driven hard
 * @param budget the cap; absent for none
 * @param purchase the price, while the car is not bought; absent once it is owned
 * @param spent money already spent: shown as not counted, in no figure
 */
public record OwnerInputs(
        double worthSound,
        boolean worthAssumed,
        double partsValue,
        double valuePerHp,
        double hourPrice,
        double weekWithout,
        double monthsKept,
        boolean hardPulls,
        Optional<Budget> budget,
        Optional<Purchase> purchase,
        double spent) {
    public OwnerInputs {
        Check.positive("The worth of the car with a sound engine", worthSound);
        Check.notNegative("The worth for parts", partsValue);
        Check.notNegative("The worth of one hp", valuePerHp);
        Check.notNegative("The price of an own hour", hourPrice);
        Check.notNegative("The price of a week without the car", weekWithout);
        Check.notNegative("The months kept", monthsKept);
        Check.notNegative("The money already spent", spent);
    }
}
