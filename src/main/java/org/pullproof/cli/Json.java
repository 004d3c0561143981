package org.pullproof.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One JSON object for {@code --json}, in the order of the calls. What is absent leaves no key; numbers are written with all their
 * digits.
 */
public final class Json {
    private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");
    private static final ObjectWriter WRITER = JsonMapper.builder()
            .build()
            .writer(new DefaultPrettyPrinter(
                            Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                    .withObjectIndenter(INDENTER));

    private final Map<String, Object> entries = new LinkedHashMap<>();

    public Json put(String key, String text) {
        entries.put(key, text);
        return this;
    }

    public Json put(String key, int whole) {
        entries.put(key, whole);
        return this;
    }

    /**
     * @throws IllegalArgumentException if the number is not finite: JSON has no way to write it
     */
    public Json put(String key, double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("\"" + key + "\" is not finite: " + number);
        }
        entries.put(key, number);
        return this;
    }

    public Json put(String key, boolean flag) {
        entries.put(key, flag);
        return this;
    }

    public Json put(String key, OptionalDouble number) {
        number.ifPresent(there -> put(key, there));
        return this;
    }

    public Json put(String key, OptionalInt whole) {
        whole.ifPresent(there -> put(key, there));
        return this;
    }

    /** The text of a value, if it is there. */
    public Json put(String key, Optional<?> value) {
        value.ifPresent(there -> put(key, there.toString()));
        return this;
    }

    public Json put(String key, Json object) {
        entries.put(key, object.entries);
        return this;
    }

    /** A list of texts, numbers or objects. */
    public Json put(String key, List<?> list) {
        entries.put(key, list.stream().map(Json::bare).toList());
        return this;
    }

    private static Object bare(Object item) {
        return item instanceof Json json ? json.entries : item;
    }

    /** The object as indented text, without a line end after it. */
    @Override
    public String toString() {
        try {
            return WRITER.writeValueAsString(entries);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("Texts, numbers and lists can always be written", impossible);
        }
    }
}
