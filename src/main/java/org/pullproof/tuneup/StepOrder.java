package org.pullproof.tuneup;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether steps stand in an order in which they can be done: every need is a step, none waits for itself round a circle, and each
 * stands after what it needs. Names the first thing that is wrong.
 */
record StepOrder(String graph, List<Step> steps) {
    /**
     * @throws IllegalArgumentException with a sentence naming the step and what would be right
     */
    void require() {
        requireOnce();
        requireKnown();
        circle().ifPresent(round -> {
            throw new IllegalArgumentException("The steps of " + graph + " wait for each other in a circle: "
                    + String.join(" needs ", round) + "; take one of these needs away");
        });
        requireAfter();
    }

    private void requireOnce() {
        Set<String> seen = new HashSet<>();
        steps.forEach(step -> require(seen.add(step.id()), step, "stands there twice"));
    }

    private void requireKnown() {
        Set<String> known = byId().keySet();
        for (Step step : steps) {
            needs(step)
                    .forEach(need -> require(
                            known.contains(need),
                            step,
                            "needs \"" + need + "\", which is no step; the steps are " + String.join(" ", known)));
        }
    }

    private Map<String, Step> byId() {
        return steps.stream().collect(Collectors.toMap(Step::id, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }

    private static Stream<String> needs(Step step) {
        return Stream.concat(step.needs().stream(), step.after().stream());
    }

    /** A way from a step through its needs back to itself, if there is one. */
    private Optional<List<String>> circle() {
        Map<String, Step> known = byId();
        return known.keySet().stream()
                .flatMap(start -> new Walk(known, start).back(start, List.of(start)).stream())
                .findFirst();
    }

    /** A walk along the needs that looks for its start and treads on no step twice. */
    private record Walk(Map<String, Step> known, String start, Set<String> seen) {
        Walk(Map<String, Step> known, String start) {
            this(known, start, new HashSet<>());
        }

        Optional<List<String>> back(String at, List<String> way) {
            return needs(Objects.requireNonNull(known.get(at), at))
                    .filter(need -> need.equals(start) || seen.add(need))
                    .flatMap(need -> onwards(
                            need, Stream.concat(way.stream(), Stream.of(need)).toList())
                            .stream())
                    .findFirst();
        }

        private Optional<List<String>> onwards(String need, List<String> way) {
            return need.equals(start) ? Optional.of(way) : back(need, way);
        }
    }

    private void requireAfter() {
        Set<String> before = new HashSet<>();
        Set<String> off = new HashSet<>();
        for (Step step : steps) {
            needs(step)
                    .forEach(need -> require(
                            before.contains(need),
                            step,
                            "stands before step " + need + ", which it needs: move it behind"));
            step.putsBack()
                    .forEach(part -> require(
                            off.contains(part), step, "puts back \"" + part + "\", which no step before it takes off"));
            before.add(step.id());
            off.addAll(step.takesOff());
        }
    }

    private void require(boolean holds, Step step, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException("Step " + step.id() + " of " + graph + " " + otherwise);
        }
    }
}
