package org.pullproof.worth.decision.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.draws.Batches;
import org.pullproof.worth.decision.problem.Budget;

/** Chance of each bill to exceed the budget, batch by batch; the price is added where the owner says so. */
final class Overs {
    private final List<double[]> plain = new ArrayList<>();
    private final List<double[]> withPrice = new ArrayList<>();

    Overs(Bills bills, Scenario scenario) {
        Optional<Budget> budget = scenario.problem().owner().budget();
        for (int bill = 0; bill < bills.count(); bill++) {
            double[] alone = over(bills.get(bill), budget.map(Budget::cap));
            plain.add(alone);
            withPrice.add(
                    budget.filter(Budget::withPrice).isPresent()
                            ? over(bills.get(bill), budget.map(b -> b.cap() - scenario.value(Common.PRICE)))
                            : alone);
        }
    }

    private static double[] over(Bill bill, Optional<Double> cap) {
        return cap.map(bill::over).orElseGet(() -> new double[Batches.of(bill.money.length)]);
    }

    double[] of(int bill, boolean paysPrice) {
        return (paysPrice ? withPrice : plain).get(bill);
    }
}
