package org.pullproof.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pullproof.units.BadQuantityException;
import org.pullproof.units.Quantity;

/** Numeric settings as they are typed: {@code timing=32deg}. */
final class Levels {
    private Levels() {}

    /**
     * @throws IllegalArgumentException with a sentence if one is not FACTOR=VALUE with a unit that is known
     */
    static Map<String, Quantity> read(List<String> typed) {
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

    private static Quantity value(String level, int equals) {
        try {
            return Quantity.parse(level.substring(equals + 1));
        } catch (BadQuantityException wrong) {
            throw new IllegalArgumentException("--level " + level + ": " + wrong.getMessage(), wrong);
        }
    }
}
