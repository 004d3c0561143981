package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class SessionSchemaTest {
    private static final Path SCHEMA = Path.of("docs/formats/session.schema.json");

    private static String written() {
        return new String(JsonText.of(SessionJson.write(RichSession.made(), "test")), StandardCharsets.UTF_8);
    }

    @Test
    void aWrittenSessionConformsToTheSchema() {
        assertThat(JsonSchema.read(SCHEMA).problems(written())).isEmpty();
    }

    @Test
    void theSchemaRefusesAKeyItDoesNotKnow() {
        String wrong = written().replace("\"gaugeStep\"", "\"gaugeSteps\"");
        assertThat(JsonSchema.read(SCHEMA).problems(wrong)).isNotEmpty();
    }

    @Test
    void theSchemaRefusesAnUnknownKeyInTheProfile() {
        String wrong = written().replace("\"compressionRatio\"", "\"ratio\"");
        assertThat(JsonSchema.read(SCHEMA).problems(wrong)).isNotEmpty();
    }
}
