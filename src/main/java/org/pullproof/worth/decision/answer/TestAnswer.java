package org.pullproof.worth.decision.answer;

import java.util.List;
import java.util.Optional;
import org.pullproof.worth.decision.problem.MoneyTest;

/**
 * What a test is worth before deciding.
 *
 * @param test the test
 * @param value gross, with the noise of the draws; 0 when every result leads to the same act
 * @param cost minutes, money and what may break
 * @param verdict what to think of it
 * @param results what each result would mean
 */
public record TestAnswer(MoneyTest test, Sum value, double cost, Verdict verdict, List<Result> results) {

    /** What to think of a test. */
    public enum Verdict {
        /** Every result leads to the same act. */
        WORTH_NOTHING("worth-nothing"),
        /** Costs as much as it brings or more. */
        NOT_ITS_PRICE("not-its-price"),
        /** Between. */
        HARDLY_MATTERS("hardly-matters"),
        /** Brings clearly more than it costs. */
        WORTH_DOING_FIRST("worth-doing-first");

        private final String key;

        Verdict(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /**
     * What a result would mean.
     *
     * @param name the result
     * @param chance of it
     * @param best the option that is best then
     * @param highestPrice X* after it, before purchase
     */
    public record Result(String name, double chance, String best, Optional<Double> highestPrice) {}

    public TestAnswer {
        results = List.copyOf(results);
    }

    public double net() {
        return value.value() - cost;
    }
}
