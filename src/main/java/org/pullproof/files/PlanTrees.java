package org.pullproof.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.trade.Branch;

/** The trees of plans: {@code do … then}, {@code see}, {@code back … weak}, {@code choose}, {@code part}, {@code end}. */
final class PlanTrees {
    /** An end that is driven with what is not cured. */
    private static final String DRIVE = "drive";

    Map<String, Branch> named(JsonNode parts) {
        Map<String, Branch> named = new LinkedHashMap<>();
        parts.properties().forEach(part -> named.put(part.getKey(), branch(part.getValue())));
        return named;
    }

    Branch branch(JsonNode node) {
        if (node.has("do")) {
            List<String> works = new ArrayList<>();
            node.required("do").forEach(work -> works.add(work.asText()));
            return new Branch.Do(works, branch(node.required("then")));
        }
        if (node.has("see")) {
            List<Branch.Sight> sights = new ArrayList<>();
            node.required("see").forEach(sight -> sights.add(sight(sight)));
            return new Branch.See(sights);
        }
        if (node.has("back")) {
            return new Branch.Back(branch(node.required("back")), branch(node.required("weak")));
        }
        if (node.has("choose")) {
            return new Branch.Choose(named(node.required("choose")));
        }
        return node.has("part")
                ? new Branch.Part(MoneyCatalogueFile.text(node, "part"))
                : end(MoneyCatalogueFile.text(node, "end"));
    }

    private Branch.Sight sight(JsonNode node) {
        Map<String, String> chances = new LinkedHashMap<>();
        node.path("chances")
                .properties()
                .forEach(
                        chance -> chances.put(chance.getKey(), chance.getValue().asText()));
        return new Branch.Sight(MoneyCatalogueFile.text(node, "seen"), chances, branch(node.required("then")));
    }

    private static Branch end(String key) {
        if (key.equals(DRIVE)) {
            return new Branch.End(Ending.KEEP, true);
        }
        for (Ending ending : Ending.values()) {
            if (ending.key().equals(key)) {
                return new Branch.End(ending, false);
            }
        }
        throw new IllegalArgumentException("\"" + key + "\" is no end of a plan");
    }
}
