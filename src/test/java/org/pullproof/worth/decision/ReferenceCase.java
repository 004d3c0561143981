package org.pullproof.worth.decision;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.StreamSupport;
import org.pullproof.worth.decision.problem.Assumptions;
import org.pullproof.worth.decision.problem.Budget;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Cure;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.FaultMoney;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.decision.problem.HiddenState;
import org.pullproof.worth.decision.problem.Likelihood;
import org.pullproof.worth.decision.problem.MoneyTest;
import org.pullproof.worth.decision.problem.Node;
import org.pullproof.worth.decision.problem.Normal;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.problem.Overrun;
import org.pullproof.worth.decision.problem.OverrunFactor;
import org.pullproof.worth.decision.problem.Overruns;
import org.pullproof.worth.decision.problem.OwnerInputs;
import org.pullproof.worth.decision.problem.PowerNow;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.decision.problem.Purchase;
import org.pullproof.worth.decision.problem.Quote;

/**
 * A reference case of the worth method, read from its file: the question as a {@link Problem}, the expected answer as it is written.
 *
 * @param name of the file without its ending
 * @param problem the question
 * @param expected the answer, as written
 */
public record ReferenceCase(String name, Problem problem, JsonNode expected) {
    public static final List<String> NAMES =
            List.of("1-before-purchase", "2-healthy-with-budget", "3-bad-cylinder-altitude", "4-after-ten-changes");

    public static ReferenceCase read(String name) {
        String place = "/org/pullproof/worth/reference/" + name + ".json";
        try (InputStream in = Objects.requireNonNull(ReferenceCase.class.getResourceAsStream(place), place)) {
            JsonNode root = new ObjectMapper().readTree(in);
            return new ReferenceCase(name, new Reader(root).problem(), root.get("expected"));
        } catch (IOException e) {
            throw new UncheckedIOException(place, e);
        }
    }

    JsonNode expectedOption(String option) {
        return expected.get("options").get(option);
    }

    private static final class Reader {
        private final JsonNode root;
        private final JsonNode inputs;

        Reader(JsonNode root) {
            this.root = root;
            this.inputs = root.get("inputs");
        }

        Problem problem() {
            return new Problem(
                    root.get("currency").asText(),
                    owner(),
                    assumptions(),
                    PowerNow.measured(input("powerNowHp")),
                    faults(),
                    states(),
                    list(root.get("options"), this::option),
                    list(root.get("tests"), this::test),
                    Optional.empty());
        }

        private double input(String key) {
            return inputs.get(key).asDouble();
        }

        private OwnerInputs owner() {
            Optional<Budget> budget = Optional.of(new Budget(
                    input("budget"), inputs.get("budgetIncludesPrice").asBoolean()));
            Optional<Purchase> purchase = Optional.of(inputs.get("price"))
                    .filter(price -> !price.isNull())
                    .map(price -> new Purchase(
                            Optional.of(price.asDouble()),
                            Optional.ofNullable(inputs.get("sellerFloor")).map(JsonNode::asDouble)));
            return new OwnerInputs(
                    input("worthSound"),
                    false,
                    input("partsValue"),
                    input("valuePerHp"),
                    input("hourPrice"),
                    input("weekWithout"),
                    input("monthsKept"),
                    inputs.get("hardPulls").asBoolean(),
                    budget,
                    purchase,
                    input("spentAlready"));
        }

        private Assumptions assumptions() {
            return new Assumptions(
                    input("resaleShare"),
                    input("saleFriction"),
                    input("overLimit"),
                    input("baseHazard12"),
                    input("hardPullFactor"),
                    quote(inputs.get("failureCost")),
                    new Overruns(overrun("repair"), overrun("rebuild"), overrun("hours"), input("overrunShared")),
                    input("smallestShare"),
                    input("changeSpread"));
        }

        private OverrunFactor overrun(String kind) {
            JsonNode pair = inputs.get("overrun").get(kind);
            return new OverrunFactor(pair.get(0).asDouble(), pair.get(1).asDouble());
        }

        private Map<String, FaultMoney> faults() {
            Map<String, FaultMoney> faults = new LinkedHashMap<>();
            for (Map.Entry<String, JsonNode> entry : root.get("faults").properties()) {
                JsonNode fault = entry.getValue();
                JsonNode restores = fault.get("restores");
                faults.put(
                        entry.getKey(),
                        new FaultMoney(
                                entry.getKey(),
                                fault.get("discount").asDouble(),
                                fault.get("hazard12").asDouble(),
                                restores.isNull()
                                        ? Normal.NOTHING
                                        : new Normal(
                                                restores.get(0).asDouble(),
                                                restores.get(1).asDouble()),
                                fault.path("tired").asBoolean(true),
                                true,
                                Optional.empty()));
            }
            return faults;
        }

        private List<HiddenState> states() {
            return list(
                    root.get("states"),
                    state -> new HiddenState(
                            words(state.get("faults")), state.get("p").asDouble()));
        }

        private Option option(JsonNode option) {
            String name = option.get("id").asText();
            Option.Role role = option.path("reference").asBoolean()
                    ? Option.Role.REFERENCE
                    : option.path("buys").asBoolean() ? Option.Role.BUYS : Option.Role.OTHER;
            return new Option(name, role, option.path("firstAct").asText(name), node(option.get("tree")));
        }

        private Node node(JsonNode node) {
            if (node.has("do")) {
                return new Node.Do(list(node.get("do"), this::line), node(node.get("then")));
            }
            if (node.has("see")) {
                return new Node.See(
                        list(node.get("see"), seen -> new Node.Outcome(likelihood(seen), node(seen.get("then")))));
            }
            if (node.has("choose")) {
                return new Node.Choose(list(
                        node.get("choose"),
                        choice -> new Node.Choice(choice.get("id").asText(), node(choice.get("then")))));
            }
            return end(node);
        }

        private Node end(JsonNode end) {
            Ending ending = List.of(Ending.values()).stream()
                    .filter(each -> each.key().equals(end.get("end").asText()))
                    .findFirst()
                    .orElseThrow();
            Cure cure = end.path("cures").asText().equals("all")
                    ? new Cure.AnotherEngine(end.get("hazard12").asDouble())
                    : new Cure.Faults(words(end.path("cures")));
            return new Node.End(ending, cure, list(end.path("gains"), this::gain));
        }

        private Gain gain(JsonNode gain) {
            JsonNode row = gain.isTextual() ? root.get("gains").get(gain.asText()) : gain;
            String name = row.get("id").asText();
            return row.has("est")
                    ? new Gain.Measured(
                            name,
                            row.get("est").asDouble(),
                            row.get("se").asDouble(),
                            row.get("dof").asDouble())
                    : new Gain.Expected(
                            name,
                            new Normal(row.get("mean").asDouble(), row.get("sd").asDouble()));
        }

        private CostLine line(JsonNode line) {
            String name = line.get("id").asText();
            boolean price = line.path("price").asBoolean();
            boolean engine = line.path("engine").asBoolean(true);
            Overrun overrun = List.of(Overrun.values()).stream()
                    .filter(each -> each.key().equals(line.path("overrun").asText("none")))
                    .findFirst()
                    .orElseThrow();
            return new CostLine(
                    name,
                    price ? CostLine.Kind.PRICE : engine ? CostLine.Kind.ENGINE : CostLine.Kind.OTHER,
                    line.has("quote")
                            ? quote(line.get("quote"))
                            : Quote.fixed(line.get("value").asDouble()),
                    overrun,
                    line.path("hours").asDouble(),
                    line.path("weeks").asDouble(),
                    Optional.ofNullable(line.get("chance"))
                            .map(chance -> new CostLine.Find(line.path("find").asText(name), chance.asDouble())),
                    words(line.path("when")));
        }

        private MoneyTest test(JsonNode test) {
            Optional<MoneyTest.Damage> damage = Optional.ofNullable(test.get("damage"))
                    .map(pair -> new MoneyTest.Damage(
                            pair.get(0).asDouble(), pair.get(1).asDouble()));
            return new MoneyTest(
                    test.get("id").asText(),
                    test.get("minutes").asDouble(),
                    test.get("money").asDouble(),
                    damage,
                    list(test.get("outcomes"), this::likelihood),
                    false,
                    Set.of());
        }

        private Likelihood likelihood(JsonNode seen) {
            return new Likelihood(seen.get("id").asText(), list(seen.get("p"), JsonNode::asDouble));
        }

        private static Quote quote(JsonNode three) {
            return new Quote(
                    three.get(0).asDouble(),
                    three.get(1).asDouble(),
                    three.get(2).asDouble());
        }

        private static Set<String> words(JsonNode array) {
            return new HashSet<>(list(array, JsonNode::asText));
        }

        private static <T> List<T> list(JsonNode array, Function<JsonNode, T> read) {
            return new ArrayList<>(
                    StreamSupport.stream(array.spliterator(), false).map(read).toList());
        }
    }
}
