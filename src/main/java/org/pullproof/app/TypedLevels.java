package org.pullproof.app;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pullproof.units.BadQuantityException;
import org.pullproof.units.Quantity;

/** Numeric settings as people type them: {@code timing=32deg}. */
public final class TypedLevels {
    private TypedLevels() {}

    /**
     * @throws IllegalArgumentException with a sentence if one is not FACTOR=VALUE with a unit that is known
     */
    public static Map<String, Quantity> read(List<String> typed) {
        Map<String, Quantity> read = new LinkedHashMap<>();
        for (String level : typed) {
            int equals = level.indexOf('=');
            if (equals < 1) {
                throw new IllegalArgumentException(
                        "\"" + level + "\" is not FACTOR=VALUE: write for instance timing=32deg.");
            }
            read.put(level.substring(0, equals).strip(), value(level, equals));
        }
        return read;
    }

    /** Reads several from one field, set apart by semicolons. */
    public static Map<String, Quantity> read(String typed) {
        return read(Arrays.stream(typed.split(";", -1))
                .map(String::strip)
                .filter(level -> !level.isEmpty())
                .toList());
    }

    private static Quantity value(String level, int equals) {
        try {
            return Quantity.parse(level.substring(equals + 1).strip());
        } catch (BadQuantityException wrong) {
            throw new IllegalArgumentException("level " + level + ": " + wrong.getMessage(), wrong);
        }
    }
}
