package org.pullproof.files;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DayGate;
import org.pullproof.dyno.DayPlan;

/** What a dyno day holds besides air and pulls: the gate before the first pull, and how the car stood. */
final class DayJson {
    private DayJson() {}

    static DayGate gate(JsonPlace place) throws BadFileException {
        place.onlyKeys("ticked", "passed", "aborts");
        Map<String, LocalDateTime> ticked = place.entries("ticked", JsonPlace::time);
        Map<String, String> passed = place.entries("passed", JsonPlace::text);
        List<DayGate.Abort> aborts = place.each("aborts", DayJson::abort);
        return place.checked(() -> new DayGate(ticked, passed, aborts));
    }

    private static DayGate.Abort abort(JsonPlace place) throws BadFileException {
        place.onlyKeys("time", "cause");
        LocalDateTime time = place.at("time").time();
        String cause = place.at("cause").text();
        return place.checked(() -> new DayGate.Abort(time, cause));
    }

    static Map<DayFact, String> facts(JsonPlace place) throws BadFileException {
        Map<DayFact, String> facts = new EnumMap<>(DayFact.class);
        place.onlyKeys(keys());
        for (DayFact fact : DayFact.values()) {
            place.maybe(fact.key(), JsonPlace::text).ifPresent(words -> facts.put(fact, words));
        }
        return facts;
    }

    private static String[] keys() {
        return Arrays.stream(DayFact.values()).map(DayFact::key).toArray(String[]::new);
    }

    static DayPlan plan(JsonPlace place) throws BadFileException {
        place.onlyKeys("visits", "pulls");
        List<String> visits = place.each("visits", JsonPlace::text);
        int pulls = place.at("pulls").whole();
        return place.checked(() -> new DayPlan(visits, pulls));
    }

    static Map<String, Object> write(DayPlan plan) {
        return new JsonObject()
                .put("visits", plan.visits())
                .put("pulls", plan.pulls())
                .entries();
    }

    static Map<String, Object> write(DayGate gate) {
        Map<String, String> ticked = new LinkedHashMap<>();
        gate.ticked().forEach((point, when) -> ticked.put(point, when.toString()));
        return new JsonObject()
                .put("ticked", ticked)
                .put("passed", gate.passed())
                .put(
                        "aborts",
                        gate.aborts().stream()
                                .map(abort -> new JsonObject()
                                        .text("time", abort.time())
                                        .put("cause", abort.cause())
                                        .entries())
                                .toList())
                .entries();
    }

    static Map<String, Object> write(Map<DayFact, String> facts) {
        JsonObject written = new JsonObject();
        facts.forEach((fact, words) -> written.put(fact.key(), words));
        return written.entries();
    }
}
