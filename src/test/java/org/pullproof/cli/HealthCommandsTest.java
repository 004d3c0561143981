package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.cli.CommandHarness.Outcome;

class HealthCommandsTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path folder;

    private Path made(String profile) {
        Path session = folder.resolve("car");
        pullproof.run("new", session, "--profile", profile, "--name", "car");
        return session;
    }

    private Path table(String name, String... more) throws Exception {
        Path from = Path.of("src/test/resources/org/pullproof/health").resolve(name);
        String text = Files.readString(from).replaceFirst("#.*\n", "");
        return Files.writeString(folder.resolve("readings.csv"), text + String.join("\n", more));
    }

    private JsonNode json(Object... arguments) throws Exception {
        return new ObjectMapper().readTree(pullproof.run(arguments).out());
    }

    /** FAA AC 43.13-1B change 1: 0.040 in against 0.040 in at 80 psi gives 61.767 psi, 22.79 %. */
    @Test
    void leakdownAgreesWithThePublishedReference() throws Exception {
        JsonNode leak =
                json("leakdown", "--supply", "80psi", "--reading", "61.767psi", "--orifice", "0.040in", "--json");
        assertThat(leak.path("leakPercent").doubleValue()).isCloseTo(22.79, within(0.005));
        assertThat(leak.path("leakAreaMm2").doubleValue()).isCloseTo(Math.PI / 4 * 1.016 * 1.016, within(1e-4));
        assertThat(leak.path("referenceReadingKpa").doubleValue()).isCloseTo(61.767 * 6.894757293168361, within(1e-6));
        assertThat(leak.path("dischargeCoefficient").doubleValue()).isPositive();
        assertThat(leak.has("crankTorqueNm")).isFalse();
    }

    /** About 56 N·m: common practice, no source. */
    @Test
    void leakdownTellsTheTorqueOnTheCrank() throws Exception {
        JsonNode leak = json(
                "leakdown",
                "--supply",
                "690kPa",
                "--reading",
                "690kPa",
                "--bore",
                "101.6mm",
                "--stroke",
                "88mm",
                "--rod",
                "145mm",
                "--degrees",
                "10deg",
                "--json");
        assertThat(leak.path("crankTorqueNm").doubleValue()).isCloseTo(56, within(0.7));
    }

    @Test
    void withoutTheRestrictorThereIsNoAreaAndNothingIsAssumed() throws Exception {
        JsonNode leak = json("leakdown", "--supply", "80psi", "--reading", "70psi", "--json");
        assertThat(leak.path("leakPercent").doubleValue()).isCloseTo(12.5, within(1e-9));
        assertThat(leak.has("leakAreaMm2")).isFalse();
        assertThat(leak.has("referenceReadingKpa")).isFalse();
    }

    @Test
    void aReadingAboveTheSupplyIsWrongInput() {
        Outcome refused = pullproof.run("leakdown", "--supply", "80psi", "--reading", "90psi");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("0 to the supply");
    }

    @Test
    void halfACrankIsWrongUsage() {
        assertThat(pullproof
                        .run("leakdown", "--supply", "80psi", "--reading", "70psi", "--degrees", "10deg")
                        .status())
                .isEqualTo(2);
    }

    @Test
    void readingsTakenInAreCounted() throws Exception {
        JsonNode told = json("add-readings", made("v8-distributor-order-a"), table("d1-sound-v8.csv"), "--json");
        assertThat(told.path("added").intValue()).isEqualTo(16);
        assertThat(told.path("rows").intValue()).isEqualTo(16);
        assertThat(told.path("problems").size()).isZero();
    }

    @Test
    void aWrongRowIsToldWithItsPlaceAndNothingIsTakenIn() throws Exception {
        Path session = made("i4-coil-on-plug");
        String before = Files.readString(session.resolve("session.json"));
        Outcome refused = pullproof.run("add-readings", session, table("d1-sound-v8.csv"));
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("readings.csv, row 6, column cylinder: Cylinder 5 of 4");
        assertThat(Files.readString(session.resolve("session.json"))).isEqualTo(before);
    }

    @Test
    void healthOfASoundEngineHasItsFigures() throws Exception {
        Path session = made("v8-distributor-order-a");
        pullproof.run("add-readings", session, table("d1-sound-v8.csv", "oil-pressure,,24psi,"));
        JsonNode health = json("health", session, "--json");
        assertThat(health.path("sound").textValue()).isEqualTo("yes");
        assertThat(health.path("spreadPercent").doubleValue()).isCloseTo(100 * 8.0 / 163, within(1e-9));
        assertThat(health.path("rules").size()).isEqualTo(5);
        assertThat(health.path("rules").get(0).path("source").textValue()).isNotBlank();
        JsonNode third = health.path("cylinders").get(2);
        assertThat(third.path("number").intValue()).isEqualTo(3);
        assertThat(third.path("compression").path("dryKpa").doubleValue())
                .isCloseTo(155 * 6.894757293168361, within(1e-9));
        assertThat(third.path("compression").path("strokes").intValue()).isEqualTo(6);
        assertThat(third.path("balance").path("dropRpm").doubleValue()).isEqualTo(65);
    }

    @Test
    void healthTellsWhereTheAirGoes() throws Exception {
        Path session = made("v6-even-fire-60");
        pullproof.run("add-readings", session, table("d3-exhaust-valve-v6.csv"));
        JsonNode fourth = json("health", session, "--json").path("cylinders").get(3);
        assertThat(fourth.path("leakdown").path("air").get(0).textValue()).isEqualTo("exhaust");
        assertThat(fourth.path("leakdown").path("leakPercent").doubleValue()).isEqualTo(93);
        assertThat(fourth.path("words").textValue()).isEqualTo("low, air at the exhaust");
    }

    @ParameterizedTest
    @ValueSource(strings = {"soundProbability", "engineWide", "pairs", "nextTests"})
    void healthTellsChancesAndTheNextTest(String key) throws Exception {
        assertThat(json("health", made("i4-coil-on-plug"), "--json").has(key)).isTrue();
    }

    @Test
    void healthForPeopleBeginsWithTheAnswer() throws Exception {
        Path session = made("i4-coil-on-plug");
        pullproof.run("add-readings", session, table("d2-dead-cylinder-i4.csv"));
        Outcome told = pullproof.run("health", session, "--units", "metric");
        assertThat(told.out()).startsWith("Not sound. Cylinder 3 most likely has no spark; the other three agree");
        assertThat(told.out()).contains("dry, kPa", "rule, strictest first");
    }
}
