package org.pullproof.worth.trade;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every number of the trade by its key, with the owner's own in the place of the defaults. Immutable. */
public final class JudgedNumbers {
    private final Map<String, JudgedNumber> byKey;

    public JudgedNumbers(List<JudgedNumber> all) {
        Map<String, JudgedNumber> ordered = new LinkedHashMap<>();
        for (JudgedNumber one : all) {
            if (ordered.put(one.key(), one) != null) {
                throw new IllegalArgumentException("Two judgements are called " + one.key());
            }
        }
        this.byKey = Collections.unmodifiableMap(ordered);
    }

    /**
     * These with the owner's own numbers in their places.
     *
     * @throws IllegalArgumentException if there is no judgement of such a key
     */
    public JudgedNumbers with(Map<String, Double> own) {
        own.keySet().forEach(this::number);
        List<JudgedNumber> next = new ArrayList<>();
        byKey.forEach((key, usual) -> {
            Double other = own.get(key);
            next.add(other == null ? usual : usual.with(other));
        });
        return new JudgedNumbers(next);
    }

    /** These with other defaults; what the owner has told stands. */
    JudgedNumbers withUsual(Map<String, Double> defaults) {
        return new JudgedNumbers(byKey.values().stream()
                .map(one -> {
                    Double usual = defaults.get(one.key());
                    return usual == null || one.own()
                            ? one
                            : JudgedNumber.usual(one.key(), one.words(), one.unit(), usual);
                })
                .toList());
    }

    /**
     * @throws IllegalArgumentException if there is no judgement of that key
     */
    public double of(String key) {
        return number(key).value();
    }

    /**
     * @throws IllegalArgumentException if there is no judgement of that key
     */
    public JudgedNumber number(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("\"" + key + "\" is no judgement known here"));
    }

    public Optional<JudgedNumber> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** In the order they are shown. */
    public List<JudgedNumber> all() {
        return List.copyOf(byKey.values());
    }
}
