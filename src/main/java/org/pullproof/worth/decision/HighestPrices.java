package org.pullproof.worth.decision;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.answer.PurchaseAnswer;
import org.pullproof.worth.decision.answer.PurchaseAnswer.Finding;
import org.pullproof.worth.decision.answer.Sum;
import org.pullproof.worth.decision.draws.Batches;
import org.pullproof.worth.decision.money.Figure;
import org.pullproof.worth.decision.problem.FaultMoney;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.problem.Purchase;
import org.pullproof.worth.decision.tree.Weights;

/**
 * X*, the highest price: over the buying options allowed the largest E N + price, less E N of walking away. Reckoned at a price of 0,
 * because the net falls by 1 for every 1 of price and the price does not count to the budget here.
 */
final class HighestPrices {
    private static final int SHEET = 3;

    private final Weighed free;
    private final BitSet open;

    private HighestPrices(Weighed free) {
        this.free = free;
        this.open = free.best().allowed();
    }

    /** Absent once the car is owned, or if no option that is allowed buys it. */
    static Optional<HighestPrices> of(Weighed weighed) {
        if (weighed.problem().owner().purchase().isEmpty()) {
            return Optional.empty();
        }
        HighestPrices prices =
                new HighestPrices(weighed.moved(weighed.scenario().with(Common.PRICE, 0)));
        return Optional.of(prices)
                .filter(found -> found.buyer(found.free.chances()).isPresent());
    }

    /** X* under these weights, which need not add up to 1. */
    double at(double[] weight) {
        int buyer = buyer(weight).orElseThrow();
        return (net(buyer, weight) - net(free.reference(), weight)) / Weights.sum(weight);
    }

    double now() {
        return at(free.chances());
    }

    private OptionalInt buyer(double[] weight) {
        BitSet allowed = free.weighing().best(weight, open).allowed();
        return IntStream.range(0, free.options())
                .filter(a -> allowed.get(a) && free.option(a).role() == Option.Role.BUYS)
                .boxed()
                .max(Comparator.<Integer>comparingDouble(a -> net(a, weight)).thenComparing(Comparator.reverseOrder()))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    private double net(int option, double[] weight) {
        return Weights.dot(weight, free.weighing().worth(option, weight));
    }

    PurchaseAnswer answer(Reruns reruns) {
        int buyer = buyer(free.chances()).orElseThrow();
        Sum highest = new Sum(now(), Batches.standardError(batches(buyer)));
        double inputs = InputNoise.between(buyer, free.reference(), reruns).total();
        Purchase purchase = free.problem().owner().purchase().orElseThrow();
        return new PurchaseAnswer(
                highest, Math.hypot(2 * highest.se(), inputs), purchase.asked(), purchase.least(), findings());
    }

    private double[] batches(int buyer) {
        double[] bought = batch(buyer);
        double[] walked = batch(free.reference());
        return IntStream.range(0, bought.length)
                .mapToDouble(b -> bought[b] - walked[b])
                .toArray();
    }

    private double[] batch(int option) {
        double[] chances = free.chances();
        return free.batches(Figure.NET, option, free.weighing().picks(option, chances), chances);
    }

    /** What ruling out a fault would add, the other states in proportion: only faults that readings speak for. */
    private List<Finding> findings() {
        return free.problem().faults().entrySet().stream()
                .filter(fault -> fault.getValue().read() && isOpen(fault.getKey()))
                .map(this::finding)
                .filter(finding -> finding.takesOff() > 0)
                .sorted(Comparator.comparingDouble(Finding::takesOff).reversed())
                .limit(SHEET)
                .toList();
    }

    private boolean isOpen(String fault) {
        double chance = free.problem().chanceOf(fault);
        return chance > 0 && chance < 1;
    }

    private Finding finding(Map.Entry<String, FaultMoney> fault) {
        double without = at(free.scenario().without(fault.getKey()).chances());
        return new Finding(fault.getKey(), without - now());
    }
}
