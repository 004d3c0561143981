package org.pullproof.worth.decision;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.problem.Problem;

/**
 * Options that are equal in every draw, which would halve each other's chance to be best: all but one of them go. The reference
 * stays; else the first.
 *
 * @param problem the problem without them
 * @param gone names that went, by the option that stands for them
 */
record Twins(Problem problem, Map<String, List<String>> gone) {

    static Twins among(Field field) {
        Weighed weighed = field.weighed();
        List<Option> options = weighed.problem().options();
        Set<Option> out = new HashSet<>();
        Map<String, List<String>> gone = new LinkedHashMap<>();
        for (int stays : referenceFirst(weighed)) {
            for (int other = 0; other < options.size() && !out.contains(options.get(stays)); other++) {
                boolean open = other != stays && other != weighed.reference() && !out.contains(options.get(other));
                if (open && field.contest().alike(stays, other)) {
                    out.add(options.get(other));
                    gone.computeIfAbsent(options.get(stays).name(), name -> new ArrayList<>())
                            .add(options.get(other).name());
                }
            }
        }
        return new Twins(
                weighed.problem()
                        .withOptions(options.stream()
                                .filter(option -> !out.contains(option))
                                .toList()),
                gone);
    }

    private static List<Integer> referenceFirst(Weighed weighed) {
        List<Integer> order = new ArrayList<>();
        order.add(weighed.reference());
        for (int a = 0; a < weighed.options(); a++) {
            if (a != weighed.reference()) {
                order.add(a);
            }
        }
        return order;
    }

    List<String> of(String option) {
        return gone.getOrDefault(option, List.of());
    }
}
