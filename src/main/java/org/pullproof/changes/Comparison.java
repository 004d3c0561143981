package org.pullproof.changes;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pullproof.engine.Setup;

/**
 * Two setups to be compared.
 *
 * @param from id of the older setup
 * @param to id of the newer setup
 * @param change the recorded change that made the newer of the older, if it was made so
 */
record Comparison(String from, String to, Optional<Change> change) {
    boolean recorded() {
        return change.isPresent();
    }

    private boolean joins(String one, String other) {
        return Set.of(from, to).equals(Set.of(one, other));
    }

    /**
     * Every setup against the one it was made from, and, where that is another, against the one whose pulls appeared before its
     * own. The way back to an earlier setup is no change.
     *
     * @param setups in the order they were made
     * @param appeared ids of the setups with pulls in order of first appearance
     */
    static List<Comparison> of(List<Setup> setups, List<Change> changes, List<String> appeared) {
        Set<String> order = new LinkedHashSet<>(appeared);
        List<String> made = setups.stream().map(Setup::id).toList();
        order.addAll(made);
        List<Comparison> all = new ArrayList<>();
        for (String setup : order) {
            madeBy(setup, made, changes)
                    .ifPresent(step -> all.add(new Comparison(step.from(), setup, Optional.of(step))));
            before(setup, appeared)
                    .filter(other -> all.stream().noneMatch(known -> known.joins(other, setup)))
                    .ifPresent(other -> all.add(new Comparison(other, setup, Optional.empty())));
        }
        return all;
    }

    /** The change by which a setup came to be: the first that leads to it from an earlier one. */
    static Optional<Change> madeBy(String setup, List<String> made, List<Change> changes) {
        return changes.stream()
                .filter(step -> step.to().equals(setup))
                .filter(step -> made.indexOf(step.from()) < made.indexOf(setup))
                .findFirst();
    }

    private static Optional<String> before(String setup, List<String> appeared) {
        int place = appeared.indexOf(setup);
        return place > 0 ? Optional.of(appeared.get(place - 1)) : Optional.empty();
    }
}
