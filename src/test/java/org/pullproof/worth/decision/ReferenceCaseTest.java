package org.pullproof.worth.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.StreamSupport;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.Flip;
import org.pullproof.worth.decision.answer.Lead;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.PolicyStep;
import org.pullproof.worth.decision.answer.Spread;
import org.pullproof.worth.decision.answer.TestAnswer;

/**
 * Four questions with every figure of their answers, computed outside the program (origin in the files; tolerances of about six
 * standard deviations of a run of this size beside each figure).
 */
class ReferenceCaseTest {
    static final List<ReferenceCase> CASES =
            ReferenceCase.NAMES.stream().map(ReferenceCase::read).toList();

    private static final Map<String, Answer> ANSWERS = new HashMap<>();

    private static Answer answer(ReferenceCase reference) {
        return ANSWERS.computeIfAbsent(reference.name(), name -> new Decision(20261).answer(reference.problem()));
    }

    private static void near(SoftAssertions softly, String what, double is, JsonNode expected, double tolerance) {
        softly.assertThat(is).as(what).isCloseTo(expected.asDouble(), within(tolerance));
    }

    private static Iterable<Map.Entry<String, JsonNode>> options(ReferenceCase reference) {
        return reference.expected().get("options").properties();
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void callAndOrderAreThoseOfTheCase(ReferenceCase reference) {
        Answer answer = answer(reference);
        assertThat(answer.call().key())
                .isEqualTo(reference.expected().get("call").asText().replace(' ', '-'));
        assertThat(answer.options().stream().map(OptionAnswer::name).toList())
                .containsExactlyElementsOf(words(reference.expected().get("order")));
        assertThat(answer.exact()).isEqualTo(reference.expected().get("exact").asBoolean());
        assertThat(answer.smallestSum())
                .isEqualTo(reference.expected().get("smallestSum").asDouble(), within(1e-9));
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void meansOfEveryOptionAreThoseOfTheCase(ReferenceCase reference) {
        SoftAssertions softly = new SoftAssertions();
        for (Map.Entry<String, JsonNode> option : options(reference)) {
            OptionAnswer row = answer(reference).option(option.getKey());
            JsonNode expected = option.getValue();
            Map<String, ToDoubleFunction<OptionAnswer>> figures = Map.of(
                    "expectedNet", it -> it.expected().value(),
                    "hours", OptionAnswer::hours,
                    "chanceOverBudget", OptionAnswer::overBudget,
                    "chanceBest", OptionAnswer::chanceBest,
                    "regret", OptionAnswer::regret);
            figures.forEach((key, figure) -> near(
                    softly,
                    option.getKey() + ": " + key,
                    figure.applyAsDouble(row),
                    expected.get(key),
                    expected.get(key + "Tol").asDouble()));
            near(
                    softly,
                    option.getKey() + ": powerAfterHp",
                    row.powerAfterHp(),
                    expected.get("powerAfterHp"),
                    expected.get("powerAfterTol").asDouble());
        }
        softly.assertAll();
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void rangesOfEveryOptionAreThoseOfTheCase(ReferenceCase reference) {
        SoftAssertions softly = new SoftAssertions();
        for (Map.Entry<String, JsonNode> option : options(reference)) {
            OptionAnswer row = answer(reference).option(option.getKey());
            spread(softly, option.getKey() + ": net", row.net(), option.getValue(), "net");
            spread(softly, option.getKey() + ": cost", row.cost(), option.getValue(), "cost");
        }
        softly.assertAll();
    }

    private static void spread(SoftAssertions softly, String what, Spread is, JsonNode expected, String key) {
        List<Double> three = List.of(is.p10(), is.p50(), is.p90());
        for (int k = 0; k < three.size(); k++) {
            double tolerance = expected.get(key + "Tol").get(k).asDouble();
            near(
                    softly,
                    what + " " + k,
                    three.get(k),
                    expected.get(key + "P10P50P90").get(k),
                    tolerance);
        }
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void whatIsAllowedDominatedAndPickedIsThatOfTheCase(ReferenceCase reference) {
        SoftAssertions softly = new SoftAssertions();
        for (Map.Entry<String, JsonNode> option : options(reference)) {
            OptionAnswer row = answer(reference).option(option.getKey());
            softly.assertThat(row.allowed())
                    .as(option.getKey())
                    .isEqualTo(option.getValue().get("allowed").asBoolean());
            softly.assertThat(withoutEdge(reference, option.getKey(), row.dominatedBy()))
                    .as(option.getKey())
                    .containsExactlyInAnyOrderElementsOf(withoutEdge(
                            reference, option.getKey(), words(option.getValue().get("dominatedBy"))));
            Map<String, Integer> policy = new HashMap<>();
            option.getValue()
                    .get("policy")
                    .properties()
                    .forEach(step -> policy.put(step.getKey(), step.getValue().asInt()));
            softly.assertThat(row.policy()).as(option.getKey()).hasSameSizeAs(policy.keySet());
            for (PolicyStep step : row.policy()) {
                softly.assertThat(step.index()).as(step.path()).isEqualTo(policy.get(step.path()));
            }
        }
        softly.assertAll();
    }

    /** In case 2 selling as it is beats the shop rebuild in 95.07 of 100 draws, so it may be missing (README of the cases). */
    private static List<String> withoutEdge(ReferenceCase reference, String option, List<String> names) {
        return reference.name().startsWith("2") && option.equals("full rebuild by shop")
                ? names.stream().filter(name -> !name.equals("sell as it is")).toList()
                : names;
    }

    /** Tolerance of a part 3 or 10 %, whichever is more. */
    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void leadAndItsNoiseAreThoseOfTheCase(ReferenceCase reference) {
        SoftAssertions softly = new SoftAssertions();
        Lead lead = answer(reference).lead().orElseThrow();
        JsonNode expected = reference.expected().get("lead");
        softly.assertThat(lead.over()).isEqualTo(expected.get("over").asText());
        near(
                softly,
                "lead",
                lead.by().value(),
                expected.get("value"),
                expected.get("tol").asDouble());
        near(
                softly,
                "noise",
                lead.inputNoise(),
                expected.get("inputNoise"),
                expected.get("inputNoiseTol").asDouble());
        Map<String, Double> parts = new HashMap<>();
        lead.parts().forEach((input, change) -> parts.put(input.key(), change));
        expected.get("parts")
                .properties()
                .forEach(part -> near(
                        softly,
                        part.getKey(),
                        parts.getOrDefault(part.getKey(), Double.NaN),
                        part.getValue(),
                        Math.max(3, 0.1 * Math.abs(part.getValue().asDouble()))));
        softly.assertThat(parts).hasSize(expected.get("parts").size());
        softly.assertAll();
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void perfectInformationIsThatOfTheCase(ReferenceCase reference) {
        SoftAssertions softly = new SoftAssertions();
        Answer answer = answer(reference);
        for (Map.Entry<String, JsonNode> entry :
                reference.expected().get("perfectInformation").properties()) {
            double is = entry.getKey().equals("state")
                    ? answer.knowing().everything()
                    : answer.knowing().fault(entry.getKey()).value();
            JsonNode expected = entry.getValue();
            near(
                    softly,
                    entry.getKey(),
                    is,
                    expected.get("value"),
                    expected.get("tol").asDouble());
        }
        softly.assertAll();
    }

    /** Tolerance 30 or 20 %; what is missing is below 1. */
    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void ingredientsAreWorthWhatTheCaseSays(ReferenceCase reference) {
        SoftAssertions softly = new SoftAssertions();
        JsonNode expected = reference.expected().get("perfectInformationAtMost");
        Map<String, Double> found = new HashMap<>();
        answer(reference)
                .knowing()
                .ingredients()
                .forEach(each -> found.put(each.kind().key() + ": " + each.name(), each.atMost()));
        expected.properties()
                .forEach(entry -> near(
                        softly,
                        entry.getKey(),
                        found.getOrDefault(entry.getKey(), 0.0),
                        entry.getValue(),
                        Math.max(30, 0.2 * entry.getValue().asDouble())));
        softly.assertAll();
    }

    /** Minutes and money are exact, so cost and net have the tolerance of their digits and of the value. */
    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void testsAreWorthWhatTheCaseSays(ReferenceCase reference) {
        SoftAssertions softly = new SoftAssertions();
        for (JsonNode expected : reference.expected().get("tests")) {
            String name = expected.get("id").asText();
            TestAnswer row = answer(reference).tests().stream()
                    .filter(test -> test.test().name().equals(name))
                    .findFirst()
                    .orElseThrow();
            double tolerance = expected.get("tol").asDouble();
            near(softly, name, row.value().value(), expected.get("value"), tolerance);
            near(softly, name, row.cost(), expected.get("cost"), 0.005);
            near(softly, name, row.net(), expected.get("net"), tolerance + 0.01);
            results(softly, row, expected);
        }
        softly.assertAll();
    }

    private static void results(SoftAssertions softly, TestAnswer row, JsonNode expected) {
        for (int k = 0; k < row.results().size(); k++) {
            TestAnswer.Result result = row.results().get(k);
            JsonNode after = expected.get("after").get(k);
            softly.assertThat(result.name()).isEqualTo(after.get("outcome").asText());
            near(softly, result.name(), result.chance(), after.get("chance"), 0.0001);
            softly.assertThat(result.best())
                    .as(result.name())
                    .isEqualTo(after.get("best").asText());
            if (expected.has("highestPriceAfter")) {
                double price = result.highestPrice().orElseThrow();
                near(
                        softly,
                        result.name(),
                        price,
                        expected.get("highestPriceAfter").get(k),
                        8);
            }
        }
    }

    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void bestPairAndHighestPriceAreThoseOfTheCase(ReferenceCase reference) {
        SoftAssertions softly = new SoftAssertions();
        Answer answer = answer(reference);
        Optional.ofNullable(reference.expected().get("bestPair")).ifPresent(pair -> {
            softly.assertThat(List.of(
                            answer.pair().orElseThrow().first(),
                            answer.pair().orElseThrow().second()))
                    .containsExactlyElementsOf(words(pair.get("ids")));
            near(softly, "pair", answer.pair().orElseThrow().value(), pair.get("value"), 1);
            near(softly, "pair", answer.pair().orElseThrow().cost(), pair.get("cost"), 0.06);
            near(softly, "pair", answer.pair().orElseThrow().net(), pair.get("net"), 1);
        });
        Optional.ofNullable(reference.expected().get("highestPrice"))
                .ifPresent(price -> near(
                        softly,
                        "highest price",
                        answer.purchase().orElseThrow().highest().value(),
                        price.get("value"),
                        price.get("tol").asDouble()));
        Optional.ofNullable(reference.expected().get("findings")).ifPresent(findings -> {
            for (int k = 0; k < findings.size(); k++) {
                var finding = answer.purchase().orElseThrow().findings().get(k);
                softly.assertThat(finding.fault())
                        .isEqualTo(findings.get(k).get("fault").asText());
                near(softly, "finding", finding.takesOff(), findings.get(k).get("raisesHighestPriceBy"), 8);
            }
        });
        softly.assertAll();
    }

    /**
     * Tolerance 3 %, in case 1 8 %, for the rebuild overrun of case 3 25 % (README of the cases). Case 2 was computed without moving
     * the gain held in a tree; with it, gains × 1.55 is right too.
     */
    @ParameterizedTest(name = "{index}")
    @FieldSource("CASES")
    void flipsAreThoseOfTheCase(ReferenceCase reference) {
        SoftAssertions softly = new SoftAssertions();
        List<Flip> flips = new ArrayList<>(answer(reference).flips());
        for (JsonNode expected : reference.expected().get("flips")) {
            String input = expected.get("input").asText();
            String to = expected.get("to").asText();
            Optional<Flip> found = flips.stream()
                    .filter(flip ->
                            flip.input().key().equals(input) && flip.becomes().equals(to))
                    .findFirst();
            softly.assertThat(found).as(input + " to " + to).isPresent();
            found.ifPresent(flip -> {
                flips.remove(flip);
                double tolerance = expected.get("flipsAt").asDouble() * tolerance(reference, input);
                near(softly, input, flip.at(), expected.get("flipsAt"), tolerance);
                near(softly, input, flip.now(), expected.get("now"), 1e-9);
            });
        }
        boolean second = reference.name().startsWith("2");
        softly.assertThat(flips.stream().map(flip -> flip.input().key()).toList())
                .containsExactlyElementsOf(second ? List.of("gains") : List.of());
        softly.assertAll();
    }

    private static double tolerance(ReferenceCase reference, String input) {
        if (reference.name().startsWith("3") && input.equals("quotes:rebuild")) {
            return 0.25;
        }
        return reference.name().startsWith("1") ? 0.08 : 0.03;
    }

    private static List<String> words(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }
}
