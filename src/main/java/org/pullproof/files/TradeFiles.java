package org.pullproof.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.pullproof.dyno.DoNotRun;
import org.pullproof.health.TestKind;
import org.pullproof.health.nexttest.TestCost;
import org.pullproof.health.nexttest.TestCosts;
import org.pullproof.tuneup.StepGraph;
import org.pullproof.tuneup.StepGraphs;
import org.pullproof.units.Money;
import org.pullproof.worth.TestPrice;
import org.pullproof.worth.TestPrices;

/**
 * The defaults of the trade that the program brings along: step graphs, cautions, prices of tests. They are part of
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
                .map(id -> graph("tuneup/" + id + ".json", cautions))
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

    /** Cautions in full sentences, in the place of words that stand for an act. */
    List<String> resolved(List<String> sentences) {
        return resolved(sentences, cautions());
    }

    /** The caution that ends every list of cautions. */
    public String lastCaution() {
        return text(tree("advice/cautions.json"), "always");
    }

    /** What must be right before a car is loaded. */
    public DoNotRun doNotRun() {
        JsonNode file = tree("dyno/do-not-run.json");
        List<DoNotRun.Check> checks = new ArrayList<>();
        file.path("points")
                .forEach(point ->
                        checks.add(new DoNotRun.Check(text(point, "key"), text(point, "about"), text(point, "words"))));
        return new DoNotRun(checks, strings(file.path("abort")), text(file, "abortAct"));
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

    private static TestPrice price(JsonNode price, String currency) {
        return new TestPrice(
                price.required("minutesFour").intValue(),
                price.required("minutesEight").intValue(),
                Money.of(price.required("first").doubleValue(), currency),
                Money.of(price.required("again").doubleValue(), currency));
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

    private static StepGraph graph(String name, Map<String, List<String>> acts) {
        try {
            return new StepGraphJson(sentences -> resolved(sentences, acts)).read(JsonPlace.parse(name, bytes(name)));
        } catch (BadFileException broken) {
            throw new IllegalStateException("The program's file " + name + " cannot be read", broken);
        }
    }

    private JsonNode tree(String name) {
        try {
            return json.readTree(bytes(name));
        } catch (IOException broken) {
            throw new UncheckedIOException("The program's file " + name + " cannot be read", broken);
        }
    }

    private static byte[] bytes(String name) {
        try (InputStream in = TradeFiles.class.getResourceAsStream("/org/pullproof/" + name)) {
            if (in == null) {
                throw new IllegalStateException("The program lacks its file " + name);
            }
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException("The program's file " + name + " cannot be read", broken);
        }
    }
}
