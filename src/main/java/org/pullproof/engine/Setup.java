package org.pullproof.engine;

import java.util.Map;
import org.pullproof.units.Quantity;

/**
 * A complete state of adjustment of the engine.
 *
 * @param id never changes once made: {@code base}
 * @param name what people call it: "timing 32°"
 * @param levels numeric settings by name: {@code timing} → 32 °
 * @param note free words, may be empty
 */
public record Setup(String id, String name, Map<String, Quantity> levels, String note) {
    public Setup {
        levels = Map.copyOf(levels);
        if (id.isBlank() || name.isBlank()) {
            throw new IllegalArgumentException("A setup has a name");
        }
    }

    public static Setup named(String id, String name) {
        return new Setup(id, name, Map.of(), "");
    }
}
