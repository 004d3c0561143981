package org.pullproof.worth.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pullproof.worth.decision.answer.PairAnswer;
import org.pullproof.worth.decision.answer.Sum;
import org.pullproof.worth.decision.answer.TestAnswer;
import org.pullproof.worth.decision.answer.TestAnswer.Result;
import org.pullproof.worth.decision.answer.TestAnswer.Verdict;
import org.pullproof.worth.decision.problem.Likelihood;
import org.pullproof.worth.decision.problem.MoneyTest;
import org.pullproof.worth.decision.tree.Weights;

/** The tests that may be done now, each with its worth, and the best two together. */
final class TestRows {
    private static final double MINUTES_AN_HOUR = 60;

    private final Weighed weighed;
    private final Information information;
    private final Optional<HighestPrices> prices;
    private final double smallestSum;
    private final List<MoneyTest> tests;

    TestRows(Weighed weighed, Information information, Optional<HighestPrices> prices, double smallestSum) {
        this.weighed = weighed;
        this.information = information;
        this.prices = prices;
        this.smallestSum = smallestSum;
        String best = weighed.option(weighed.best().option()).name();
        this.tests = weighed.problem().tests().stream()
                .filter(test -> !test.firstStepOf().contains(best))
                .toList();
    }

    /** Best net first. A test that is the first step of the best option is named as that step, so it is not among them. */
    List<TestAnswer> rows() {
        return tests.stream()
                .map(this::row)
                .sorted(Comparator.comparingDouble(TestAnswer::net).reversed())
                .toList();
    }

    /** minutes/60·c_h + money + P(damage)·cost. */
    private double cost(MoneyTest test) {
        double damage =
                test.damage().map(broken -> broken.chance() * broken.cost()).orElse(0.0);
        return test.minutes() / MINUTES_AN_HOUR * weighed.problem().owner().hourPrice() + test.money() + damage;
    }

    private TestAnswer row(MoneyTest test) {
        Sum value = information.figure(Information.rows(test));
        double cost = cost(test);
        List<Result> results = test.results().stream()
                .filter(result -> Weights.dot(weighed.chances(), result.row()) > 0)
                .map(this::result)
                .toList();
        return new TestAnswer(test, value, cost, verdict(value, cost), results);
    }

    private Verdict verdict(Sum value, double cost) {
        double net = value.value() - cost;
        if (value.value() == 0) {
            return Verdict.WORTH_NOTHING;
        }
        if (net <= 0) {
            return Verdict.NOT_ITS_PRICE;
        }
        return net > Math.max(smallestSum, 2 * value.se()) ? Verdict.WORTH_DOING_FIRST : Verdict.HARDLY_MATTERS;
    }

    private Result result(Likelihood result) {
        double[] row = result.row();
        return new Result(
                result.name(),
                Weights.dot(weighed.chances(), row),
                weighed.option(information.after(row).option()).name(),
                prices.map(found -> found.at(Weights.times(weighed.chances(), row))));
    }

    /** All pairs, the best net first; named when that beats the best single net by more than the smallest sum or the noise. */
    List<PairAnswer> pairs(List<TestAnswer> rows) {
        double single = rows.stream().mapToDouble(TestAnswer::net).max().orElse(0);
        List<PairAnswer> pairs = new ArrayList<>();
        for (int i = 0; i < tests.size(); i++) {
            for (int j = i + 1; j < tests.size(); j++) {
                pairs.add(pair(tests.get(i), tests.get(j), single));
            }
        }
        pairs.sort(Comparator.comparingDouble(PairAnswer::net).reversed());
        return pairs;
    }

    private PairAnswer pair(MoneyTest one, MoneyTest other, double single) {
        Sum value = information.figure(Information.product(Information.rows(one), Information.rows(other)));
        double cost = cost(one) + cost(other);
        double threshold = Math.max(smallestSum, 2 * value.se());
        double net = value.value() - cost;
        return new PairAnswer(one.name(), other.name(), value.value(), cost, net - Math.max(0, single) > threshold);
    }
}
