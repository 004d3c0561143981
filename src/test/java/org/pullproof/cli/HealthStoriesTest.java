package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented cars whose conclusions are acceptance stories of this project: read as a person reads, told by the command line. */
class HealthStoriesTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path folder;

    private Path car(String profile, String table, String... more) throws Exception {
        Path session = folder.resolve("car");
        pullproof.run("new", session, "--profile", profile, "--name", "car");
        pullproof.run("set", session, "access=own-it", "runs=yes");
        Path from = Path.of("src/test/resources/org/pullproof/health/diagnosis").resolve(table);
        add(session, Files.readString(from).replaceFirst("#.*\n", "") + String.join("\n", more));
        return session;
    }

    /** The V8 of the program with measured geometry in the place of the assumed one. */
    private String profileOfThisEngine() throws Exception {
        String measured = Files.readString(Path.of("profiles/v8-distributor-order-a.json"))
                .replace("100.0 mm", "101.6 mm")
                .replace("89.0 mm", "88.4 mm")
                .replace("145.0 mm", "144.8 mm")
                .replace("\"compressionRatio\": 8.5", "\"compressionRatio\": 9.0")
                .replace("62 °", "60 °")
                .replace("\"assumed\": true", "\"assumed\": false");
        return Files.writeString(folder.resolve("v8-distributor-order-a.json"), measured)
                .toString();
    }

    private void add(Path session, String table) throws Exception {
        Path file = Files.writeString(folder.resolve("readings.csv"), table);
        assertThat(pullproof.run("add-readings", session, file).status()).isZero();
    }

    private JsonNode health(Path session) throws Exception {
        return new ObjectMapper()
                .readTree(pullproof.run("health", session, "--json").out());
    }

    private JsonNode next(Path session) throws Exception {
        return new ObjectMapper()
                .readTree(pullproof.run("next", session, "--json").out());
    }

    private static double candidate(JsonNode health, int cylinder, String fault) {
        return probability(health.path("cylinders").get(cylinder - 1).path("candidates"), fault);
    }

    private static double probability(JsonNode list, String fault) {
        return StreamSupport.stream(list.spliterator(), false)
                .filter(one -> one.path("fault").textValue().equals(fault))
                .mapToDouble(one -> one.path("probability").doubleValue())
                .sum();
    }

    private static List<String> nextTests(JsonNode health) {
        return StreamSupport.stream(health.path("nextTests").spliterator(), false)
                .map(one -> one.path("test").textValue())
                .toList();
    }

    @Test
    void aHealthyV8IsSoundAndLeakDownWouldChangeNothing() throws Exception {
        Path session = car(
                "v8-distributor-order-a",
                "d1-sound-v8.csv",
                "oil-pressure,,24psi,,,,,,,,,,,",
                "vacuum,,18.5inHg,,,,,,,,,,,");
        JsonNode health = health(session);
        assertThat(health.path("sound").textValue()).isEqualTo("yes");
        assertThat(health.path("soundProbability").doubleValue()).isGreaterThan(0.9);
        assertThat(health.path("spreadPercent").doubleValue()).isCloseTo(5, within(0.5));
        assertThat(nextTests(health)).isEmpty();
        assertThat(health.path("nextWords").textValue()).contains("No further test");
        assertThat(next(session).path("why").textValue()).startsWith("The tune-up begins");
    }

    @Test
    void aDeadCylinderIsSparkOrFuelAndItsCoilIsSwappedFirst() throws Exception {
        Path session = car("i4-coil-on-plug", "d2-dead-cylinder-i4.csv");
        JsonNode health = health(session);
        assertThat(candidate(health, 3, "ignition")).isCloseTo(0.83, within(0.03));
        assertThat(candidate(health, 3, "ignition") + candidate(health, 3, "fuel"))
                .isGreaterThan(0.95);
        assertThat(health.path("nextWords").textValue()).endsWith("the first step of the repair tells the rest.");
        JsonNode next = next(session);
        assertThat(next.path("action").textValue()).startsWith("Swap the coil of cylinder 3");
        assertThat(next.path("minutes").intValue()).isEqualTo(10);
        assertThat(next.path("cost").doubleValue()).isZero();
        assertThat(next.path("cautions").toString()).contains("converter");
        assertThat(health.path("answer").textValue()).doesNotContain("valve");
    }

    @Test
    void aBurntValveHasItsLashCheckedFirstAndThenIsAValve() throws Exception {
        Path session = car("v6-even-fire-60", "d3-exhaust-valve-v6.csv");
        JsonNode health = health(session);
        assertThat(candidate(health, 4, "exhaust-valve") + candidate(health, 4, "valve-held-open"))
                .isGreaterThan(0.95);
        assertThat(nextTests(health)).first().isEqualTo("lash");
        assertThat(next(session).path("action").textValue()).isEqualTo("Valve lash, cylinder 4");
        add(session, "test,cylinder,value\nlash,4,in-spec\n");
        assertThat(candidate(health(session), 4, "exhaust-valve")).isGreaterThan(0.85);
    }

    @Test
    void eightyEightPsiBesideALeakOfSixtyTwoPercentAreRepeated() throws Exception {
        Path session = car("v6-even-fire-60", "d3-exhaust-valve-v6.csv");
        add(session, """
                test,cylinder,value,first,strokes,supply,orifice,air,throttle,plugs
                compression-dry,4,88psi,75psi,6,,,,open,all-out
                leakdown,4,62%,,,90psi,1.0mm,exhaust,,
                """);
        assertThat(health(session).path("reasons").toString().replace('\u00a0', ' '))
                .contains("leak-down 62 % and 88 psi do not fit one hole; repeat both");
    }

    @Test
    void tiredRingsAtAltitudeAreToldApartFromTheThinAir() throws Exception {
        Path session = car(profileOfThisEngine(), "d5-rings-all-v8-high.csv");
        pullproof.run("set", session, "elevation=1580m");
        JsonNode health = health(session);
        assertThat(probability(health.path("engineWide"), "rings-all")).isGreaterThan(0.75);
        assertThat(health.path("remarks").toString().replace('\u00a0', ' '))
                .containsPattern("takes about 2[789] psi")
                .contains("explains a part only");
        assertThat(health.path("sound").textValue()).isNotEqualTo("yes");
    }

    /** The same readings on an engine whose geometry is assumed: they could be thin air, were it not for the leak-down. */
    @Test
    void tiredRingsAreNotPutDownToThinAirWhereTheGeometryIsAssumed() throws Exception {
        Path session = car("v8-distributor-order-a", "d5-rings-all-v8-high.csv");
        pullproof.run("set", session, "elevation=1600m");
        JsonNode health = health(session);
        assertThat(probability(health.path("engineWide"), "rings-all")).isGreaterThan(0.75);
        assertThat(health.path("remarks").toString())
                .contains("explains a part only")
                .doesNotContain("explains the low figures");
    }

    @Test
    void thinAirAloneIsNoFault() throws Exception {
        Path session = car("i4-coil-on-plug", "d8-altitude-only-i4.csv", "oil-pressure,,24psi,,,,,,,,,,,");
        pullproof.run("set", session, "elevation=2190m");
        JsonNode health = health(session);
        assertThat(health.path("sound").textValue()).isEqualTo("yes");
        assertThat(probability(health.path("engineWide"), "altitude-only")).isGreaterThan(0.9);
    }

    @Test
    void aPairOfNeighboursIsTold() throws Exception {
        JsonNode pairs =
                health(car("i4-coil-on-plug", "d4b-neighbours-heard-i4.csv")).path("pairs");
        assertThat(pairs.get(0).path("cylinders").toString()).isEqualTo("[2,3]");
        assertThat(pairs.get(0).path("probability").doubleValue()).isGreaterThan(0.9);
    }
}
