package org.pullproof.worth;

import java.util.Map;
import java.util.Optional;

/**
 * What each test takes, by its key.
 *
 * @param byKey prices by the key of the test or act: {@code balance}, {@code dyno-pull}
 */
public record TestPrices(Map<String, TestPrice> byKey) {
    public TestPrices {
        byKey = Map.copyOf(byKey);
    }

    /**
     * @throws IllegalArgumentException if the key has no price
     */
    public TestPrice of(String key) {
        return Optional.ofNullable(byKey.get(key))
                .orElseThrow(() -> new IllegalArgumentException("\"" + key + "\" has no price"));
    }
}
