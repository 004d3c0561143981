package org.pullproof.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.pullproof.engine.FuelSystem;
import org.pullproof.engine.Ignition;
import org.pullproof.health.TestKind;
import org.pullproof.health.nexttest.TestCost;
import org.pullproof.health.nexttest.TestCosts;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.StepGraph;
import org.pullproof.tuneup.StepGraphs;
import org.pullproof.units.Money;
import org.pullproof.worth.DefaultOption;
import org.pullproof.worth.DefaultOption.Expected;
import org.pullproof.worth.TestPrice;
import org.pullproof.worth.TestPrices;

/**
 * The defaults of the trade that the program brings along: step graphs, cautions, prices of tests, options. They are part of
 * the program, so one that cannot be read is a fault of the program and ends it.
 */
public final class TradeFiles {
    /** The tune-ups a profile may name. */
    static final List<String> GRAPHS = List.of(
            "v-distributor",
            "v-coil-on-plug",
            "inline-distributor",
            "inline-coil-on-plug",
            "flat-distributor",
            "flat-coil-on-plug");

    /** In a list of cautions, a word that begins so stands for all cautions of that act. */
    private static final String SEE = "act:";

    private final ObjectMapper json = new ObjectMapper();

    /** The tune-ups of every kind of engine; the cautions of their steps in full sentences. */
    public StepGraphs stepGraphs() {
        Map<String, List<String>> cautions = cautions();
        return new StepGraphs(GRAPHS.stream()
                .map(id -> graph(tree("tuneup/" + id + ".json"), cautions))
                .toList());
    }

    /** Caution sentences by act, see {@code advice.Cautions}. */
    public Map<String, List<String>> cautions() {
        JsonNode acts = tree("advice/cautions.json").path("acts");
        Map<String, List<String>> told = new LinkedHashMap<>();
        acts.forEachEntry((act, sentences) -> told.put(act, strings(sentences)));
        Map<String, List<String>> full = new LinkedHashMap<>();
        told.forEach((act, sentences) -> full.put(act, resolved(sentences, told)));
        return full;
    }

    /** The caution that ends every list of cautions. */
    public String lastCaution() {
        return text(tree("advice/cautions.json"), "always");
    }

    /** What each test takes. */
    public TestPrices testPrices() {
        JsonNode file = tree("worth/test-prices.json");
        String currency = text(file, "currency");
        Map<String, TestPrice> prices = new LinkedHashMap<>();
        file.path("prices").forEachEntry((key, price) -> prices.put(key, price(price, currency)));
        return new TestPrices(prices);
    }

    /** What each test takes, as the choice of the next test asks for it. */
    public TestCosts testCosts() {
        TestPrices prices = testPrices();
        return (test, cylinders, all, again) -> {
            TestPrice price = prices.of(all && test == TestKind.LEAKDOWN ? "leakdown-all" : test.key());
            Money money = again ? price.again() : price.first();
            return new TestCost(price.minutes(cylinders), money.value());
        };
    }

    /** The program's own options. */
    public List<DefaultOption> options() {
        JsonNode file = tree("worth/options.json");
        List<DefaultOption> options = new ArrayList<>();
        file.path("options").forEach(option -> options.add(option(option, text(file, "currency"))));
        return options;
    }

    private static StepGraph graph(JsonNode file, Map<String, List<String>> cautions) {
        List<Step> steps = new ArrayList<>();
        file.path("steps").forEach(step -> steps.add(step(step, text(file, "currency"), cautions)));
        Map<String, List<String>> plans = new LinkedHashMap<>();
        file.path("plans").forEach(plan -> plans.put(text(plan, "name"), strings(plan.path("steps"))));
        return new StepGraph(text(file, "id"), text(file, "name"), steps, plans);
    }

    private static Step step(JsonNode step, String currency, Map<String, List<String>> cautions) {
        return new Step(
                text(step, "id"),
                text(step, "title"),
                strings(step.path("needs")),
                strings(step.path("after")),
                strings(step.path("takesOff")),
                strings(step.path("putsBack")),
                strings(step.path("backBeforeStart")),
                step.required("minutes").intValue(),
                Money.of(step.path("parts").asDouble(0), currency),
                resolved(strings(step.path("cautions")), cautions),
                heat(step),
                Step.Kind.valueOf(step.path("kind")
                        .asText("work")
                        .toUpperCase(Locale.ROOT)
                        .replace('-', '_')));
    }

    private static Step.Heat heat(JsonNode step) {
        if (step.path("cools").asBoolean(false)) {
            return Step.Heat.COOLS;
        }
        return step.path("warm").asBoolean(false) ? Step.Heat.WARM : Step.Heat.ANY;
    }

    private static TestPrice price(JsonNode price, String currency) {
        return new TestPrice(
                price.required("minutesFour").intValue(),
                price.required("minutesEight").intValue(),
                Money.of(price.required("first").doubleValue(), currency),
                Money.of(price.required("again").doubleValue(), currency));
    }

    private static DefaultOption option(JsonNode option, String currency) {
        JsonNode cost = option.required("cost");
        return new DefaultOption(
                text(option, "name"),
                Money.of(cost.required(0).doubleValue(), currency),
                Money.of(cost.required(1).doubleValue(), currency),
                Money.of(cost.required(2).doubleValue(), currency),
                option.required("hours").doubleValue(),
                expected(option),
                kinds(option.path("ignition"), Ignition.class),
                kinds(option.path("fuel"), FuelSystem.class),
                option.path("onlyWithFault").asBoolean(false));
    }

    private static Expected expected(JsonNode option) {
        return option.has("weakCylinder")
                ? new Expected.CylinderBack(option.required("weakCylinder").doubleValue())
                : new Expected.Normal(
                        option.required("gainMean").doubleValue(),
                        option.required("gainSd").doubleValue());
    }

    private static <E extends Enum<E>> Set<E> kinds(JsonNode names, Class<E> type) {
        Set<E> kinds = EnumSet.noneOf(type);
        names.forEach(name -> kinds.add(Enum.valueOf(type, name.textValue())));
        return kinds;
    }

    /** Puts the sentences of an act in the place of a word that stands for it; each sentence once. */
    private static List<String> resolved(List<String> sentences, Map<String, List<String>> acts) {
        Set<String> full = new LinkedHashSet<>();
        for (String sentence : sentences) {
            if (sentence.startsWith(SEE)) {
                String act = sentence.substring(SEE.length());
                if (!acts.containsKey(act)) {
                    throw new IllegalArgumentException("There are no cautions for \"" + act + "\"");
                }
                full.addAll(resolved(acts.getOrDefault(act, List.of()), acts));
            } else {
                full.add(sentence);
            }
        }
        return List.copyOf(full);
    }

    private static String text(JsonNode node, String field) {
        return node.required(field).asText();
    }

    private static List<String> strings(JsonNode list) {
        List<String> strings = new ArrayList<>();
        list.forEach(item -> strings.add(item.asText()));
        return strings;
    }

    private JsonNode tree(String name) {
        try (InputStream in = TradeFiles.class.getResourceAsStream("/org/pullproof/" + name)) {
            if (in == null) {
                throw new IllegalStateException("The program lacks its file " + name);
            }
            return json.readTree(in);
        } catch (IOException broken) {
            throw new UncheckedIOException("The program's file " + name + " cannot be read", broken);
        }
    }
}
