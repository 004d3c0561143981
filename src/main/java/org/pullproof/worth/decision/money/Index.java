package org.pullproof.worth.decision.money;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Numbers different values in the order they come. */
final class Index<T> {
    private final Map<T, Integer> places = new HashMap<>();
    private final List<T> values = new ArrayList<>();

    int of(T value) {
        return places.computeIfAbsent(value, added -> {
            values.add(added);
            return values.size() - 1;
        });
    }

    List<T> values() {
        return List.copyOf(values);
    }
}
