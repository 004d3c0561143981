package org.pullproof.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Writes a tree of maps, lists and values as JSON for people: indented, in the order given, a line feed on every system. */
final class JsonText {
    private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");
    private static final Separators SEPARATORS =
            Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER);
    private static final ObjectWriter WRITER =
            JsonMapper.builder().build().writer(new DefaultPrettyPrinter(SEPARATORS).withObjectIndenter(INDENTER));

    private JsonText() {}

    static byte[] of(Map<String, ?> object) {
        try {
            return (WRITER.writeValueAsString(object) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("Maps, lists, texts and numbers can always be written", impossible);
        }
    }
}
