package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ProfileSchemaTest {
    private static final Path SCHEMA = Path.of("docs/formats/profile.schema.json");
    private static final Path PROFILES = Path.of("profiles");

    static List<Path> profiles() throws IOException {
        try (Stream<Path> files = Files.list(PROFILES)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void everyProfileConformsToTheSchema(Path profile) throws IOException {
        assertThat(JsonSchema.read(SCHEMA).problems(Files.readString(profile))).isEmpty();
    }

    @Test
    void theSchemaRefusesALengthWithoutUnit() throws IOException {
        String wrong =
                Files.readString(PROFILES.resolve("i4-coil-on-plug.json")).replace("86.0 mm", "86.0");
        assertThat(JsonSchema.read(SCHEMA).problems(wrong))
                .singleElement()
                .asString()
                .contains("/bore");
    }
}
