package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.tuneup.StepGraph;

class StepGraphJsonTest {
    private static final JsonSchema SCHEMA = JsonSchema.read(Path.of("docs/formats/steps.schema.json"));

    static Stream<StepGraph> graphs() {
        return new TradeFiles().stepGraphs().all().stream();
    }

    static Stream<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/org/pullproof/tuneup"))) {
            return files.toList().stream();
        }
    }

    private static String written(StepGraph graph) {
        return new String(JsonText.of(StepGraphJson.write(graph)), StandardCharsets.UTF_8);
    }

    private static StepGraph read(String text) throws BadFileException {
        return new StepGraphJson(UnaryOperator.identity())
                .read(JsonPlace.parse("steps.json", text.getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @MethodSource("files")
    void theProgramsOwnStepsConformToTheSchema(Path file) throws IOException {
        assertThat(SCHEMA.problems(Files.readString(file))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("graphs")
    void whatIsWrittenConformsAndIsReadAsItWas(StepGraph graph) throws BadFileException {
        assertThat(SCHEMA.problems(written(graph))).isEmpty();
        assertThat(read(written(graph))).isEqualTo(graph);
    }

    @Test
    void aCircleInEditedStepsIsToldWithFileAndPlace() {
        String text = """
                {"format": 1, "id": "mine", "name": "Mine", "currency": "EUR", "steps": [
                 {"id": "a", "title": "One", "minutes": 5, "needs": ["b"]},
                 {"id": "b", "title": "Two", "minutes": 5, "needs": ["a"]},
                 {"id": "g", "title": "Gate", "minutes": 5, "kind": "start-gate"}]}
                """;
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> read(text))
                .withMessageContaining("steps.json")
                .withMessageContaining("a needs b needs a");
    }
}
