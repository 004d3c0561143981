package org.pullproof.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.pullproof.tuneup.Consumable;
import org.pullproof.tuneup.Outfit;
import org.pullproof.tuneup.Recheck;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.Step.Heat;
import org.pullproof.tuneup.Step.Kind;
import org.pullproof.tuneup.StepGraph;
import org.pullproof.units.Dimension;
import org.pullproof.units.Money;

/** The steps of a tune-up: the program's own, and those edited for a car. The schema lies in {@code docs/formats}. */
final class StepGraphJson {
    private static final int FORMAT = 1;

    private final UnaryOperator<List<String>> cautions;

    /**
     * @param cautions puts whole sentences in the place of words that stand for an act
     */
    StepGraphJson(UnaryOperator<List<String>> cautions) {
        this.cautions = cautions;
    }

    private record Plan(String name, List<String> steps) {}

    StepGraph read(JsonPlace place) throws BadFileException {
        place.onlyKeys("format", "id", "name", "source", "currency", "steps", "plans");
        DocumentFormat.require(place, FORMAT);
        String id = place.at("id").text();
        String name = place.at("name").text();
        String currency = place.at("currency").text();
        List<Step> steps = place.at("steps").list(step -> step(step, currency));
        Map<String, List<String>> plans = new LinkedHashMap<>();
        for (Plan plan : place.each("plans", StepGraphJson::plan)) {
            plans.put(plan.name(), plan.steps());
        }
        return place.at("steps").checked(() -> new StepGraph(id, name, steps, plans));
    }

    private static Plan plan(JsonPlace place) throws BadFileException {
        place.onlyKeys("name", "steps");
        return new Plan(place.at("name").text(), place.at("steps").list(JsonPlace::text));
    }

    private Step step(JsonPlace place, String currency) throws BadFileException {
        place.onlyKeys(
                "id",
                "title",
                "needs",
                "after",
                "takesOff",
                "putsBack",
                "backBeforeStart",
                "minutes",
                "cautions",
                "heat",
                "kind",
                "eachCylinder",
                "tools",
                "figures",
                "buys",
                "work",
                "later");
        String id = place.at("id").text();
        String title = place.at("title").text();
        List<String> needs = place.each("needs", JsonPlace::text);
        List<String> after = place.each("after", JsonPlace::text);
        List<String> takesOff = place.each("takesOff", JsonPlace::text);
        List<String> putsBack = place.each("putsBack", JsonPlace::text);
        List<String> back = place.each("backBeforeStart", JsonPlace::text);
        int minutes = place.at("minutes").whole();
        List<String> acts = place.each("cautions", JsonPlace::text);
        List<String> warned = place.checked(() -> cautions.apply(acts));
        Heat heat = place.maybe("heat", at -> at.oneOf(Heat.class)).orElse(Heat.ANY);
        Kind kind = place.maybe("kind", at -> at.oneOf(Kind.class)).orElse(Kind.WORK);
        Outfit outfit = outfit(place, currency);
        Money parts = Money.of(
                outfit.buys().stream().mapToDouble(buy -> buy.price().value()).sum(), currency);
        return place.checked(() -> new Step(
                id, title, needs, after, takesOff, putsBack, back, minutes, parts, warned, heat, kind, outfit));
    }

    private static Outfit outfit(JsonPlace place, String currency) throws BadFileException {
        return new Outfit(
                place.each("eachCylinder", JsonPlace::text),
                place.each("tools", JsonPlace::text),
                place.each("figures", JsonPlace::text),
                place.each("buys", at -> buy(at, currency)),
                place.maybe("work", JsonPlace::text),
                place.each("later", StepGraphJson::later));
    }

    private static Consumable buy(JsonPlace place, String currency) throws BadFileException {
        place.onlyKeys("name", "price");
        String name = place.at("name").text();
        double price = place.at("price").number();
        return place.checked(() -> new Consumable(name, Money.of(price, currency)));
    }

    private static Recheck later(JsonPlace place) throws BadFileException {
        place.onlyKeys("what", "days", "distance");
        String what = place.at("what").text();
        int days = place.at("days").whole();
        var distance = place.maybe("distance", at -> at.quantity(Dimension.LENGTH));
        return place.checked(() -> new Recheck(what, days, distance));
    }

    static Map<String, Object> write(StepGraph graph) {
        return new JsonObject()
                .put("format", FORMAT)
                .put("id", graph.id())
                .put("name", graph.name())
                .put("currency", currency(graph))
                .put("steps", graph.steps().stream().map(StepGraphJson::write).toList())
                .put(
                        "plans",
                        graph.plans().entrySet().stream()
                                .map(StepGraphJson::writePlan)
                                .toList())
                .entries();
    }

    private static String currency(StepGraph graph) {
        return graph.gate().parts().currency();
    }

    private static Map<String, Object> writePlan(Map.Entry<String, List<String>> plan) {
        return new JsonObject()
                .put("name", plan.getKey())
                .put("steps", plan.getValue())
                .entries();
    }

    private static Map<String, Object> write(Step step) {
        Outfit outfit = step.outfit();
        return new JsonObject()
                .put("id", step.id())
                .put("title", step.title())
                .unlessEmpty("needs", step.needs())
                .unlessEmpty("after", step.after())
                .unlessEmpty("takesOff", step.takesOff())
                .unlessEmpty("eachCylinder", outfit.eachCylinder())
                .unlessEmpty("putsBack", step.putsBack())
                .unlessEmpty("backBeforeStart", step.backBeforeStart())
                .put("minutes", step.minutes())
                .key("heat", step.heat() == Heat.ANY ? Optional.empty() : Optional.of(step.heat()))
                .key("kind", step.kind() == Kind.WORK ? Optional.empty() : Optional.of(step.kind()))
                .unlessEmpty("tools", outfit.tools())
                .unlessEmpty("figures", outfit.figures())
                .unlessEmpty(
                        "buys", outfit.buys().stream().map(StepGraphJson::write).toList())
                .text("work", outfit.work())
                .unlessEmpty(
                        "later",
                        outfit.later().stream().map(StepGraphJson::write).toList())
                .unlessEmpty("cautions", step.cautions())
                .entries();
    }

    private static Map<String, Object> write(Consumable buy) {
        return new JsonObject()
                .put("name", buy.name())
                .put("price", buy.price().value())
                .entries();
    }

    private static Map<String, Object> write(Recheck later) {
        return new JsonObject()
                .put("what", later.what())
                .put("days", later.days())
                .text("distance", later.distance())
                .entries();
    }
}
