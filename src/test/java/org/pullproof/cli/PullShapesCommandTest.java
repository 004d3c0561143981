package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.cli.CommandHarness.Outcome;
import org.pullproof.dyno.Pull;

/**
 * Pull files in eight shapes, by the command line. The right values are those of {@code expected.jsonl}, made outside this program:
 * torque 260·(1 − ((n − 3900)/4200)²) N·m with a ripple of 0.1 %, power = torque × speed.
 */
class PullShapesCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path place;

    static Stream<JsonNode> shapes() throws IOException {
        String lines = new String(resource("expected.jsonl"), StandardCharsets.UTF_8);
        List<JsonNode> shapes = new ArrayList<>();
        for (String line : lines.lines().toList()) {
            shapes.add(JSON.readTree(line));
        }
        return shapes.stream();
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream in = Pull.class.getResourceAsStream(name)) {
            return Objects.requireNonNull(in, name).readAllBytes();
        }
    }

    private JsonNode taken(JsonNode shape) throws IOException {
        Path file = place.resolve(shape.get("file").asText());
        Files.write(file, resource(shape.get("file").asText()));
        Path session = place.resolve("car");
        pullproof.run("new", session, "--profile", "v8-distributor-order-a", "--name", "grey coupé");
        List<Object> words = new ArrayList<>(List.of("add-pulls", session, file, "--setup", "base"));
        if (shape.has("inertiaKgM2")) {
            words.addAll(List.of("--inertia", shape.get("inertiaKgM2").asText() + "kgm2"));
        }
        Outcome added = pullproof.run(words.toArray());
        assertThat(added.status()).as(added.err()).isZero();
        return JSON.readTree(pullproof.run("pulls", session, "--json").out()).get("pulls");
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void theFileGivesItsPullsWithPeakAndRange(JsonNode shape) throws IOException {
        JsonNode pulls = taken(shape);
        double percent = shape.path("tolerancePercent").asDouble(0.1);
        assertThat(pulls).hasSize(shape.get("pulls").asInt());
        JsonNode pull = pulls.get(0);
        assertThat(pull.get("peakMeasuredKw").asDouble())
                .isCloseTo(shape.get("peakMeasuredKw").asDouble(), withinPercentage(percent));
        assertThat(pull.get("peakMeasuredRpm").asDouble())
                .isCloseTo(shape.get("peakMeasuredRpm").asDouble(), within(shape.has("inertiaKgM2") ? 60.0 : 0.0));
        assertThat(pull.get("rpmFrom").asDouble())
                .isEqualTo(shape.get("rpmFrom").asDouble());
        assertThat(pull.get("rpmTo").asDouble())
                .isCloseTo(shape.get("rpmTo").asDouble(), within(shape.has("inertiaKgM2") ? 5.0 : 0.0));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void everyPullOfAFileHasItsOwnPeak(JsonNode shape) throws IOException {
        JsonNode pulls = taken(shape);
        int checked = 0;
        for (JsonNode peak : shape.path("peaksMeasuredKw")) {
            assertThat(pulls.get(checked).get("peakMeasuredKw").asDouble())
                    .isCloseTo(peak.asDouble(), withinPercentage(0.1));
            checked++;
        }
        assertThat(checked).isEqualTo(shape.path("peaksMeasuredKw").size());
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void theKeptFileIsByteForByteTheOneThatCame(JsonNode shape) throws IOException {
        taken(shape);
        String name = shape.get("file").asText();
        assertThat(Files.readAllBytes(place.resolve("car/pulls").resolve(name))).isEqualTo(resource(name));
    }
}
