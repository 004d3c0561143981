package org.pullproof.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.pullproof.engine.FuelSystem;
import org.pullproof.engine.Ignition;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Option.Role;
import org.pullproof.worth.decision.problem.Overrun;
import org.pullproof.worth.trade.Branch;
import org.pullproof.worth.trade.Catalogue;
import org.pullproof.worth.trade.FaultRow;
import org.pullproof.worth.trade.JudgedNumber;
import org.pullproof.worth.trade.JudgedNumbers;
import org.pullproof.worth.trade.Plan;
import org.pullproof.worth.trade.Work;

/**
 * Works, faults and options of the trade as the program brings them along; part of the program, so one that cannot be read is a
 * fault of the program.
 */
public final class MoneyCatalogueFile {
    private static final String NAME = "/org/pullproof/worth/catalogue.json";
    private static final List<String> QUOTE = List.of("p10", "p50", "p90");
    private static final List<String> RESTORES = List.of("eight", "six", "four");
    private static final Map<String, String> IN_WORDS = Map.of(
            "p10",
            "1 in 10 less",
            "p50",
            "in the middle",
            "p90",
            "1 in 10 more",
            "eight",
            "eight cylinders",
            "six",
            "six",
            "four",
            "four");

    private final List<JudgedNumber> numbers = new ArrayList<>();

    /** Reads the catalogue of the program. */
    public static Catalogue read() {
        try (InputStream in = MoneyCatalogueFile.class.getResourceAsStream(NAME)) {
            if (in == null) {
                throw new IllegalStateException("The program lacks its file " + NAME);
            }
            return new MoneyCatalogueFile()
                    .catalogue(JsonMapper.builder().build().readTree(in));
        } catch (IOException broken) {
            throw new UncheckedIOException("The program's file " + NAME + " cannot be read", broken);
        }
    }

    private MoneyCatalogueFile() {}

    private Catalogue catalogue(JsonNode file) {
        file.path("owner").forEach(this::number);
        List<FaultRow> faults = new ArrayList<>();
        Map<String, Work> works = new LinkedHashMap<>();
        file.path("works").forEach(row -> works.put(text(row, "key"), work(row)));
        file.path("faults").forEach(row -> faults.add(fault(row)));
        file.path("assumptions").forEach(this::number);
        PlanTrees trees = new PlanTrees();
        List<Plan> plans = new ArrayList<>();
        file.path("plans").forEach(row -> plans.add(plan(row, trees)));
        Map<String, Branch> parts = trees.named(file.path("parts"));
        return new Catalogue(text(file, "currency"), new JudgedNumbers(numbers), faults, works, parts, plans)
                .with(Map.of());
    }

    private void number(JsonNode row) {
        add(text(row, "key"), text(row, "words"), text(row, "unit"), row.required("value"));
    }

    private void add(String key, String words, String unit, JsonNode value) {
        numbers.add(JudgedNumber.usual(key, words, unit, value.doubleValue()));
    }

    private FaultRow fault(JsonNode row) {
        FaultRow fault = new FaultRow(
                text(row, "key"),
                text(row, "words"),
                row.required("tired").booleanValue(),
                row.path("felt").asBoolean(false),
                row.path("hidden").asBoolean(false));
        numbers.add(JudgedNumber.usual(fault.number("discount"), fault.words() + ": a buyer takes off", "money", 0));
        add(fault.number("hazard"), fault.words() + ": fails within 12 months", "chance", row.required("hazard"));
        JsonNode restores = row.required("restores");
        for (int i = 0; i < RESTORES.size(); i++) {
            String size = RESTORES.get(i);
            add(
                    fault.number("restores." + size),
                    fault.words() + ": its cure gives back, " + IN_WORDS.get(size),
                    "percent",
                    restores.required(i));
        }
        if (row.has("sd")) {
            add(fault.number("restores.sd"), fault.words() + ": spread of that", "percent", row.required("sd"));
        }
        return fault;
    }

    private Work work(JsonNode row) {
        Work work = new Work(
                text(row, "key"),
                text(row, "words"),
                row.path("kind").asText("engine").equals("other") ? CostLine.Kind.OTHER : CostLine.Kind.ENGINE,
                Overrun.valueOf(row.path("overrun").asText("none").toUpperCase(Locale.ROOT)),
                row.has("find") ? Optional.of(text(row, "find")) : Optional.empty(),
                strings(row.path("when")),
                row.has("gain"),
                strings(row.path("subjects")),
                strings(row.path("cures")),
                strings(row.path("needs")),
                keys(row.path("mayCure")),
                row.has("engine"),
                kinds(row.path("ignition"), Ignition.class),
                kinds(row.path("fuel"), FuelSystem.class),
                row.path("owned").asBoolean(false),
                row.has("heads") ? OptionalInt.of(row.required("heads").intValue()) : OptionalInt.empty());
        numbersOf(work, row);
        return work;
    }

    private void numbersOf(Work work, JsonNode row) {
        JsonNode money = row.required("money");
        for (int i = 0; i < QUOTE.size(); i++) {
            String place = QUOTE.get(i);
            add(work.number(place), work.words() + ": costs, " + IN_WORDS.get(place), "money", money.required(i));
        }
        maybe(work, row, "hours", "own hours", "hours");
        maybe(work, row, "weeks", "weeks without the car", "weeks");
        maybe(work, row, "chance", "chance of it", "chance");
        row.path("mayCure")
                .properties()
                .forEach(cure -> add(
                        work.number("may-cure." + cure.getKey()),
                        work.words() + ": chance that it cures " + cure.getKey(),
                        "chance",
                        cure.getValue()));
        if (work.gains()) {
            add(
                    work.number("gain.mean"),
                    work.words() + ": gains",
                    "percent",
                    row.path("gain").required(0));
            add(
                    work.number("gain.sd"),
                    work.words() + ": spread of that",
                    "percent",
                    row.path("gain").required(1));
        }
        if (work.otherEngine()) {
            add(work.number("hazard"), work.words() + ": fails within 12 months", "chance", row.required("engine"));
        }
    }

    private void maybe(Work work, JsonNode row, String field, String words, String unit) {
        if (row.has(field)) {
            add(work.number(field), work.words() + ": " + words, unit, row.required(field));
        }
    }

    private static Plan plan(JsonNode row, PlanTrees trees) {
        return new Plan(
                text(row, "name"),
                Role.valueOf(row.path("role").asText("other").toUpperCase(Locale.ROOT)),
                text(row, "stands").equals("owned"),
                row.has("firstAct") ? Optional.of(text(row, "firstAct")) : Optional.empty(),
                row.has("firstTest") ? Optional.of(text(row, "firstTest")) : Optional.empty(),
                row.has("runs") ? Optional.of(row.required("runs").booleanValue()) : Optional.empty(),
                strings(row.path("for")),
                strings(row.path("needsWork")),
                row.path("parts").asBoolean(false),
                row.path("days").asBoolean(false),
                trees.branch(row.required("tree")));
    }

    static String text(JsonNode node, String field) {
        return node.required(field).asText();
    }

    private static Set<String> strings(JsonNode list) {
        Set<String> strings = new LinkedHashSet<>();
        list.forEach(item -> strings.add(item.asText()));
        return strings;
    }

    private static Set<String> keys(JsonNode object) {
        Set<String> keys = new LinkedHashSet<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static <E extends Enum<E>> Set<E> kinds(JsonNode names, Class<E> type) {
        Set<E> kinds = new LinkedHashSet<>();
        names.forEach(name -> kinds.add(Enum.valueOf(type, name.asText())));
        return kinds;
    }
}
