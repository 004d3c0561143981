package org.pullproof.session;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The values of judgement that this session's owner has put in the place of the program's own.
 *
 * @param edited by name ({@code faults.priors.faultyCylinders}), in the unit that the program's own value has
 */
public record Judgement(SortedMap<String, Double> edited) {
    public Judgement {
        edited = Collections.unmodifiableSortedMap(new TreeMap<>(edited));
    }

    /** The program's own values throughout. */
    public static Judgement own() {
        return new Judgement(new TreeMap<>());
    }

    public boolean isOwn() {
        return edited.isEmpty();
    }

    public Optional<Double> of(String name) {
        return Optional.ofNullable(edited.get(name));
    }

    /**
     * @param values by name; an empty one goes back to the program's own
     */
    public Judgement with(Map<String, Optional<Double>> values) {
        TreeMap<String, Double> next = new TreeMap<>(edited);
        values.forEach((name, value) -> value.ifPresentOrElse(kept -> next.put(name, kept), () -> next.remove(name)));
        return new Judgement(next);
    }
}
