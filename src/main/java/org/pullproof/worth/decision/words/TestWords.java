package org.pullproof.worth.decision.words;

import java.util.List;
import java.util.Optional;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.PairAnswer;
import org.pullproof.worth.decision.answer.TestAnswer;
import org.pullproof.worth.decision.answer.TestAnswer.Result;
import org.pullproof.worth.decision.answer.TestAnswer.Verdict;

/** Part 4: what to find out first, or that nothing that may be found out now would change the answer. */
final class TestWords {
    private static final double STEP = 50;
    private static final int NAMED = 2;

    private final Answer answer;
    private final Rounded rounded;
    private final List<TestAnswer> tests;

    TestWords(Answer answer) {
        this.answer = answer;
        this.rounded = new Rounded(answer.problem().currency());
        this.tests =
                answer.tests().stream().filter(row -> !row.test().gate()).toList(); // those have a part of their own
    }

    /** Absent when there is no test to do. */
    Optional<String> sentence() {
        if (tests.isEmpty()) {
            return Optional.empty();
        }
        TestAnswer first = tests.get(0);
        if (first.verdict() == Verdict.WORTH_DOING_FIRST) {
            return Optional.of(before(first));
        }
        return Optional.of(pair().orElseGet(() -> alone(first)));
    }

    /** Whether it comes before what to do. */
    boolean isFirst() {
        return answer.pair().filter(PairAnswer::named).isPresent()
                || tests.stream().anyMatch(test -> test.verdict() == Verdict.WORTH_DOING_FIRST);
    }

    private String alone(TestAnswer first) {
        return switch (first.verdict()) {
            case HARDLY_MATTERS ->
                named(first) + " hardly matters: worth about " + value(first) + ", costs " + cost(first) + health(first)
                        + ".";
            case NOT_ITS_PRICE -> "No test you may do now is worth its price: " + dearest() + health(first) + ".";
            case WORTH_NOTHING, WORTH_DOING_FIRST -> nothing();
        };
    }

    private String before(TestAnswer first) {
        List<String> results = first.results().stream().map(this::result).toList();
        return "Before you decide, " + Names.bold(first.test().name()) + " (worth about " + value(first) + ", costs "
                + cost(first) + "): " + String.join(", ", results) + withPair() + other(first) + ".";
    }

    /** What a result would lead to; before a purchase with the highest price after it. */
    private String result(Result result) {
        String price = result.highestPrice()
                .map(highest ->
                        " (highest price about " + rounded.typed(Math.max(0, Math.floor(highest / STEP) * STEP)) + ")")
                .orElse("");
        return "\"" + result.name() + "\" means \"" + result.best() + "\"" + price;
    }

    /** The test that people would do instead: the one that says most about the engine, else the next that is not its price. */
    private String other(TestAnswer first) {
        String health = health(first);
        if (!health.isEmpty()) {
            return health;
        }
        return tests.stream()
                .filter(test -> test.verdict() == Verdict.NOT_ITS_PRICE)
                .findFirst()
                .map(test -> "; " + brings(test))
                .orElse("");
    }

    private String brings(TestAnswer test) {
        return test.test().name() + " is worth about " + value(test) + ", not its price of " + cost(test);
    }

    private String dearest() {
        return Names.joined(tests.stream()
                .filter(test -> test.verdict() == Verdict.NOT_ITS_PRICE)
                .limit(NAMED)
                .map(this::brings)
                .toList());
    }

    /** Two tests that pay much more together. */
    private Optional<String> pair() {
        return answer.pair()
                .filter(PairAnswer::named)
                .map(pair -> "Before you decide, " + Names.bold(pair.first()) + " and " + Names.bold(pair.second())
                        + " together (worth about " + rounded.sum(pair.value()) + ", cost " + rounded.sum(pair.cost())
                        + "): alone each says too little.");
    }

    private String withPair() {
        return answer.pair()
                .filter(PairAnswer::named)
                .map(pair -> "; " + pair.first() + " and " + pair.second() + " together are worth about "
                        + rounded.sum(pair.value()) + " and cost " + rounded.sum(pair.cost()))
                .orElse("");
    }

    private String nothing() {
        List<String> names =
                tests.stream().limit(NAMED).map(test -> test.test().name()).toList();
        String verb = names.size() == 1 ? " is" : " are";
        return "No test you may do now would change this: " + Names.joined(names) + verb + " worth " + rounded.typed(0)
                + ", as every result leads to the same act"
                + health(tests.get(0)) + ".";
    }

    /** When the test that says most about the engine is another than the one worth most: both reasons. */
    private String health(TestAnswer first) {
        return answer.problem()
                .healthNext()
                .filter(name -> !name.equals(first.test().name()))
                .flatMap(name -> tests.stream()
                        .filter(test -> test.test().name().equals(name))
                        .findFirst())
                .map(test -> "; " + test.test().name() + " says most about the fault, but "
                        + (test.value().value() == 0
                                ? "either answer leaves you at \""
                                        + answer.best().name() + "\""
                                : "is worth about " + value(test) + " and costs " + cost(test)))
                .orElse("");
    }

    private static String named(TestAnswer test) {
        return Names.bold(Names.capital(test.test().name()));
    }

    private String value(TestAnswer test) {
        return rounded.sum(test.value().value(), 2 * test.value().se());
    }

    private String cost(TestAnswer test) {
        return rounded.typed(test.cost());
    }
}
