package org.pullproof.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Builds one JSON object in the order of the calls; what is absent leaves no key. */
final class JsonObject {
    private final Map<String, Object> entries = new LinkedHashMap<>();

    JsonObject put(String key, String text) {
        entries.put(key, text);
        return this;
    }

    JsonObject put(String key, int whole) {
        entries.put(key, whole);
        return this;
    }

    JsonObject put(String key, double number) {
        entries.put(key, number);
        return this;
    }

    JsonObject put(String key, boolean flag) {
        entries.put(key, flag);
        return this;
    }

    JsonObject put(String key, Map<String, ?> object) {
        entries.put(key, object);
        return this;
    }

    JsonObject put(String key, List<?> list) {
        entries.put(key, list);
        return this;
    }

    /** Writes the text of a value as typed: a quantity, a time, money. */
    JsonObject text(String key, Object value) {
        return put(key, value.toString());
    }

    JsonObject text(String key, Optional<?> value) {
        value.ifPresent(there -> text(key, there));
        return this;
    }

    JsonObject key(String key, Enum<?> choice) {
        return put(key, Keys.of(choice));
    }

    JsonObject key(String key, Optional<? extends Enum<?>> choice) {
        choice.ifPresent(there -> key(key, there));
        return this;
    }

    JsonObject put(String key, OptionalInt whole) {
        whole.ifPresent(there -> put(key, there));
        return this;
    }

    /** Leaves the key out if the text is empty. */
    JsonObject unlessEmpty(String key, String text) {
        return text.isEmpty() ? this : put(key, text);
    }

    /** Leaves the key out if the list is empty. */
    JsonObject unlessEmpty(String key, List<?> list) {
        return list.isEmpty() ? this : put(key, list);
    }

    Map<String, Object> entries() {
        return entries;
    }
}
