package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.cli.CommandHarness.Outcome;
import org.pullproof.dyno.Pull;

class DrumCommandTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path place;

    private Path file(String name) throws Exception {
        try (InputStream in = Pull.class.getResourceAsStream(name)) {
            return Files.write(place.resolve(name), Objects.requireNonNull(in).readAllBytes());
        }
    }

    private static JsonNode json(Outcome outcome) throws Exception {
        assertThat(outcome.status()).as(outcome.err()).isZero();
        return new ObjectMapper().readTree(outcome.out());
    }

    private static JsonNode at(JsonNode curve, int rpm) {
        for (JsonNode point : curve) {
            if (point.get("rpm").asInt() == rpm) {
                return point;
            }
        }
        throw new AssertionError("no point at " + rpm + " rpm");
    }

    /** The law of the file, see SOURCE.md: torque at 4000 rpm 260·(1 − (100/4200)²) = 259.853 N·m, with a ripple of 0.1 %. */
    @Test
    void thePowerOfTheRollIsThatOfTheLaw() throws Exception {
        JsonNode run = json(pullproof.run("drum", file("A4_time_and_roll_speed.csv"), "--inertia", "34kgm2", "--json"));
        JsonNode point = at(run.get("curve"), 4000);
        assertThat(point.get("torqueNm").asDouble()).isCloseTo(259.853, withinPercentage(1));
        assertThat(point.get("powerKw").asDouble()).isCloseTo(259.853 * 4000 * Math.PI / 30 / 1e3, withinPercentage(1));
        assertThat(run.get("speedOf").asText()).isEqualTo("engine");
        assertThat(run.get("lossesCounted").asBoolean()).isFalse();
    }

    /** {@code inertia_run.csv}: 37,026.6 W at 61.1 rad/s, which is 583.5 rpm of the roll. */
    @Test
    void aRunWithoutEngineSpeedIsToldBySpeedOfTheRoll() throws Exception {
        JsonNode run = json(pullproof.run("drum", file("inertia_run.csv"), "--inertia", "30.00kgm2", "--json"));
        assertThat(run.get("speedOf").asText()).isEqualTo("roll");
        assertThat(at(run.get("curve"), 580).get("powerKw").asDouble()).isCloseTo(36.85, within(0.1));
    }

    /**
     * A roll of 20 kg·m² that loses 4 + 0.02·ω N·m, built by small steps: with its own coast-down the power is that of the wheels,
     * 150 N·m times the speed of the roll.
     */
    @Test
    void whatTheRollLosesIsAdded() throws Exception {
        Path run = Files.writeString(place.resolve("run.csv"), table(40, 150, 60));
        Path coast = Files.writeString(place.resolve("coast.csv"), table(300, 0, 500));
        JsonNode told = json(pullproof.run("drum", run, "--inertia", "20.00kgm2", "--coast-down", coast, "--json"));
        JsonNode point = at(told.get("curve"), 900);
        assertThat(point.get("torqueNm").asDouble()).isCloseTo(150, within(0.3));
        assertThat(told.at("/rollLoss/aNm").asDouble()).isCloseTo(4, within(0.05));
        assertThat(told.at("/rollLoss/bNms").asDouble()).isCloseTo(0.02, within(0.001));
    }

    private static String table(double radian, double driving, double seconds) {
        StringBuilder lines = new StringBuilder("time s,roll speed rad/s\n");
        double speed = radian;
        for (int step = 0; step <= seconds * 1000 && speed > 20 && speed < 310; step++) {
            if (step % 250 == 0) {
                lines.append(String.format(Locale.ROOT, "%.3f,%.6f%n", step / 1000.0, speed));
            }
            speed += 0.001 * (driving - 4 - 0.02 * speed) / 20;
        }
        return lines.toString();
    }

    @Test
    void peopleReadHowWellItIsKnownAndWhatIsNotCounted() throws Exception {
        String told = pullproof
                .run("drum", file("A4_time_and_roll_speed.csv"), "--inertia", "34kgm2", "--units", "metric")
                .out()
                .replace('\u00a0', ' ');
        assertThat(told)
                .contains("known within 1.5 %")
                .contains("is not counted")
                .contains("4,000");
    }

    /** {@code coastdown.csv}: F = 150 + 2 v + 0.45 v² N, 416.667 N at 80 km/h; 1500 kg. */
    @Test
    void theDragOfACarIsToldFromItsCoastDown() throws Exception {
        JsonNode told = json(pullproof.run(
                "coast-down",
                file("coastdown.csv"),
                "--mass",
                "1500kg",
                "--column",
                "roll=speed_km_h:km/h",
                "--column",
                "time=time_s (closed form from 120 km/h):s",
                "--json"));
        assertThat(told.get("aN").asDouble()).isCloseTo(150, within(0.1));
        assertThat(told.get("cNs2PerM2").asDouble()).isCloseTo(0.45, within(0.001));
        assertThat(told.get("losses").get(6).get("forceN").asDouble()).isCloseTo(416.667, within(0.01));
    }

    @Test
    void theInertiaIsNeeded() throws Exception {
        Outcome refused = pullproof.run("drum", file("A4_time_and_roll_speed.csv"));
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("--inertia 34kgm2");
    }

    @Test
    void aFileWithoutRollSpeedIsRefusedWithTheColumnsThereAre() throws Exception {
        Outcome refused = pullproof.run("drum", file("A1_plain_hp_lbft.csv"), "--inertia", "34kgm2");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err())
                .contains("line 1: the file has no time column; columns found: rpm, power_hp, torque_lbft");
    }
}
