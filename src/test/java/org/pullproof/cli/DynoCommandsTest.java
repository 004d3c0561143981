package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.cli.CommandHarness.Outcome;
import org.pullproof.dyno.Pull;

class DynoCommandsTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path place;

    private Path session() {
        Path session = place.resolve("car");
        pullproof.run("new", session, "--profile", "v8-distributor-order-a", "--name", "grey coupé");
        return session;
    }

    /** Invented pull of 128.1752 kW at 5350 rpm, see the folder's SOURCE.md. */
    private Path pull(String name) throws Exception {
        Path file = place.resolve(name);
        try (InputStream in = Pull.class.getResourceAsStream("A1_plain_hp_lbft.csv")) {
            Files.write(file, Objects.requireNonNull(in).readAllBytes());
        }
        return file;
    }

    private static JsonNode json(Outcome outcome) throws Exception {
        assertThat(outcome.err()).isEmpty();
        return new ObjectMapper().readTree(outcome.out());
    }

    /** 40 CFR 1065.645 worked example: 50.77 % at 20 °C has a dew point of 9.5 °C and 1.18658 kPa of vapour. */
    @Test
    void weatherTellsTheStateOfTheAir() throws Exception {
        JsonNode air = json(pullproof.run(
                "weather", "--pressure", "99.980kPa", "--temperature", "20C", "--humidity", "50.77%", "--json"));
        assertThat(air.get("vapourPressureKpa").asDouble()).isCloseTo(1.18658, within(1e-4));
        assertThat(air.get("dewPointC").asDouble()).isCloseTo(9.5, within(1e-3));
        assertThat(air.get("relativeHumidity").asDouble()).isCloseTo(0.5077, within(1e-9));
    }

    /** Formula grid: 25 °C, 95 kPa, 30 % is 1.062115 (J1349), 1.063817 (ISO 1585) and 1.0948 (J607); 1 hp = 0.7457 kW. */
    @Test
    void weatherTellsEveryFactorAndCorrectsAPower() throws Exception {
        JsonNode factors = json(pullproof.run(
                        "weather",
                        "--pressure",
                        "95.000kPa",
                        "--temperature",
                        "25,0 C",
                        "--humidity",
                        "30%",
                        "--power",
                        "100hp",
                        "--json"))
                .get("factors");
        assertThat(factors.at("/sae-j1349/factor").asDouble()).isCloseTo(1.062115, within(1e-4));
        assertThat(factors.at("/iso-1585/factor").asDouble()).isCloseTo(1.063817, within(1e-4));
        assertThat(factors.at("/sae-j607/factor").asDouble()).isCloseTo(1.0948, within(1e-4));
        assertThat(factors.at("/sae-j1349/correctedPowerKw").asDouble()).isCloseTo(74.56999 * 1.062115, within(0.01));
        assertThat(factors.at("/din-70020/withinRange").asBoolean()).isTrue();
    }

    /** A published test: 1013 hPa at 1588 m is 836.25 hPa. */
    @Test
    void weatherTakesAnAltimeterSettingAndADewPoint() throws Exception {
        JsonNode air = json(pullproof.run(
                "weather",
                "--altimeter",
                "1013hPa",
                "--elevation",
                "1588m",
                "--temperature",
                "20C",
                "--dew-point",
                "9.5C",
                "--json"));
        assertThat(air.get("stationPressureKpa").asDouble()).isCloseTo(83.625, within(1e-3));
        assertThat(air.get("vapourPressureKpa").asDouble()).isCloseTo(1.186581, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "98.2kPa, 30C, 140%, 1, 140 % is not a relative humidity",
        "-98.2kPa, 30C, 60%, 1, -98.2 kPa is not a station pressure",
        "98.2, 30C, 60%, 2, \"\"98.2\"\" has no unit",
        "98.2kPa, 30, 60%, 2, \"\"30\"\" has no unit"
    })
    void badAirIsASentence(String pressure, String temperature, String humidity, int status, String sentence) {
        Outcome refused = pullproof.run(
                "weather", "--pressure=" + pressure, "--temperature", temperature, "--humidity", humidity, "--json");
        assertThat(refused.status()).isEqualTo(status);
        assertThat(refused.err()).contains(sentence.replace("\"\"", "\"")).doesNotContain("Exception");
        assertThat(refused.out()).isEmpty();
    }

    @Test
    void aSeaLevelPressureIsHeldAgainstTheElevation() {
        Outcome refused = pullproof.run(
                "weather",
                "--pressure",
                "101.3kPa",
                "--elevation",
                "600m",
                "--temperature",
                "30C",
                "--humidity",
                "60%");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("looks like an altimeter setting");
    }

    @Test
    void anElevationTypedIsHeldAgainstAirForASessionToo() throws Exception {
        Path session = session();
        Outcome refused = pullproof.run(
                "weather",
                "--pressure",
                "101.3kPa",
                "--elevation",
                "600m",
                "--temperature",
                "30C",
                "--humidity",
                "60%",
                "--session",
                session);
        assertThat(refused.status()).isEqualTo(1);
        assertThat(Files.readString(session.resolve("session.json"))).doesNotContain("stationPressure");
    }

    @Test
    void twoPressuresAreWrongUsage() {
        Outcome refused = pullproof.run(
                "weather", "--pressure", "98kPa", "--altimeter", "101kPa", "--temperature", "30C", "--humidity", "60%");
        assertThat(refused.status()).isEqualTo(2);
    }

    @Test
    void aSessionKeepsAnAltimeterSettingAsItWasTyped() throws Exception {
        Path session = session();
        pullproof.run(
                "weather",
                "--altimeter",
                "101.30kPa",
                "--elevation",
                "600m",
                "--temperature",
                "30C",
                "--wet-bulb",
                "20C",
                "--session",
                session);
        assertThat(Files.readString(session.resolve("session.json")))
                .containsSubsequence("altimeter-setting", "101.30 kPa", "600 m", "wet-bulb", "20 °C");
    }

    /** The factor of that air from the grid, 1.062115, times the peak of the file. */
    @Test
    void pullsAreCorrectedByTheAirOfTheirDay() throws Exception {
        Path session = session();
        pullproof.run(
                "weather",
                "--pressure",
                "95.000kPa",
                "--temperature",
                "25.0C",
                "--humidity",
                "30%",
                "--session",
                session,
                "--at",
                "2026-06-14T13:40");
        pullproof.run("add-pulls", session, pull("b1.csv"), "--setup", "base", "--at", "2026-06-14T13:45");
        JsonNode pull = json(pullproof.run("pulls", session, "--json")).at("/pulls/0");
        assertThat(pull.get("name").asText()).isEqualTo("base-1");
        assertThat(pull.get("peakMeasuredKw").asDouble()).isCloseTo(128.1752, within(0.1));
        assertThat(pull.get("peakCorrectedKw").asDouble()).isCloseTo(128.1752 * 1.062115, within(0.1));
        assertThat(pull.get("standard").asText()).isEqualTo("sae-j1349");
        assertThat(pull.get("excluded").asBoolean()).isFalse();
    }

    @Test
    void aPullWithoutAirHasNoCorrectedKeys() throws Exception {
        Path session = session();
        pullproof.run("add-pulls", session, pull("b1.csv"), "--at", "2026-06-14T13:45");
        JsonNode pull = json(pullproof.run("pulls", session, "--json")).at("/pulls/0");
        assertThat(pull.has("bandMeasuredKw")).isTrue();
        assertThat(pull.has("peakCorrectedKw")).isFalse();
        assertThat(pull.has("bandCorrectedKw")).isFalse();
        assertThat(pull.has("factor")).isFalse();
        assertThat(pull.get("standard").asText()).isEqualTo("none");
    }

    @Test
    void addPullsTellsWhatItTookIn() throws Exception {
        Path session = session();
        Path file = pull("b1.csv");
        JsonNode added = json(pullproof.run(
                        "add-pulls", session, file, file, "--setup", "base", "--level", "timing=10deg", "--json"))
                .get("added");
        assertThat(added.at("/0/pull").asText()).isEqualTo("base-1");
        assertThat(added.at("/0/setup").asText()).isEqualTo("base");
        assertThat(added.at("/0/file").asText()).isEqualTo("b1.csv");
        assertThat(added.at("/0/samples").asInt()).isEqualTo(161);
        assertThat(added.at("/0/flags").isEmpty()).isTrue();
        assertThat(added.at("/1/flags/0").asText()).startsWith("duplicate: ");
    }

    @Test
    void pullsOfOneTimeToldStandInOrderAndTheGuessIsSaid() throws Exception {
        Path session = session();
        Outcome added = pullproof.run(
                "add-pulls", session, pull("b1.csv"), pull("b2.csv"), "--setup", "base", "--at", "2026-06-14T13:45");
        assertThat(added.err())
                .contains(
                        "b2.csv: when pull base-2 was made is not told; it is put 5 minutes behind the one before it.");
        JsonNode pulls = json(pullproof.run("pulls", session, "--json")).get("pulls");
        assertThat(pulls.findValuesAsText("time")).containsExactly("2026-06-14T13:45", "2026-06-14T13:50");
    }

    /** The clock of the file stands at 0 s for the first pull and at 300 s for the second. */
    @Test
    void laterPullsOfAFileFollowByItsClock() throws Exception {
        Path session = session();
        StringBuilder lines = new StringBuilder("time s,rpm,kW\n");
        for (int pull = 0; pull < 2; pull++) {
            for (int i = 0; i <= 80; i++) {
                lines.append(300 * pull + 0.1 * i)
                        .append(',')
                        .append(2000 + 50 * i)
                        .append(',')
                        .append(40 + i)
                        .append('\n');
            }
        }
        Path file = Files.writeString(place.resolve("two.csv"), lines);
        Outcome added = pullproof.run("add-pulls", session, file, "--at", "2026-06-14T13:45");
        assertThat(added.err()).isEmpty();
        JsonNode pulls = json(pullproof.run("pulls", session, "--json")).get("pulls");
        assertThat(pulls.findValuesAsText("time")).containsExactly("2026-06-14T13:45", "2026-06-14T13:50");
    }

    @Test
    void theDateInAFileGoesBeforeThatOfTheFile() throws Exception {
        Path session = session();
        Path file =
                Files.writeString(place.resolve("dated.csv"), "Recorded 2024-05-11 14:03\nrpm,kW\n2000,40\n4000,80\n");
        pullproof.run("add-pulls", session, file);
        assertThat(json(pullproof.run("pulls", session, "--json"))
                        .at("/pulls/0/time")
                        .asText())
                .isEqualTo("2024-05-11T14:03");
    }

    @Test
    void aSessionWithADrumIsReadAgainAsItWasWritten() throws Exception {
        Path session = session();
        Path file = place.resolve("a4.csv");
        try (InputStream in = Pull.class.getResourceAsStream("A4_time_and_roll_speed.csv")) {
            Files.write(file, Objects.requireNonNull(in).readAllBytes());
        }
        pullproof.run(
                "add-pulls",
                session,
                file,
                "--inertia",
                "34.0kgm2",
                "--inertia-within",
                "1%",
                "--at",
                "2026-06-14T13:45");
        assertThat(Files.readString(session.resolve("session.json"))).contains("\"inertia\": \"34.0 kg·m²\"");
        assertThat(pullproof.run("check", session).status()).isZero();
    }

    @Test
    void aRadiusWithoutInertiaIsWrongUsage() throws Exception {
        Outcome refused = pullproof.run("add-pulls", session(), pull("b1.csv"), "--roll-radius", "0.5m");
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("needs its --inertia");
    }

    @Test
    void peopleReadWhatWasNotLogged() throws Exception {
        Path session = session();
        assertThat(pullproof
                        .run("add-pulls", session, pull("b1.csv"), "--at", "2026-06-14T13:45")
                        .out())
                .contains(
                        "Not logged, and so not judged, in as found-1: throttle, lambda, knock, boost, supply voltage");
    }

    @Test
    void oneBadFileIsNamedAndNothingTakenIn() throws Exception {
        Path session = session();
        Path bad = Files.writeString(place.resolve("bad.csv"), "time,kW\n1,2\n2,3\n");
        Outcome refused = pullproof.run("add-pulls", session, pull("b1.csv"), bad, "--setup", "base");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("bad.csv, line 1: the file has no rpm column; columns found: time, kW.");
        assertThat(json(pullproof.run("pulls", session, "--json")).get("pulls").isEmpty())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "--level, timing, is not FACTOR=VALUE",
        "--column, gearbox=MAP, 'a column is rpm, power, torque, time'",
        "--already-corrected, sae, 'a standard is one of'"
    })
    void wrongOptionsAreWrongUsage(String option, String value, String sentence) throws Exception {
        Outcome refused = pullproof.run("add-pulls", session(), pull("b1.csv"), option, value);
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains(sentence);
    }

    @Test
    void onePullHasItsCurve() throws Exception {
        Path session = session();
        pullproof.run("add-pulls", session, pull("b1.csv"), "--setup", "base");
        JsonNode curve =
                json(pullproof.run("pulls", session, "base-1", "--json")).get("curve");
        assertThat(curve.get(0).get("rpm").asInt()).isEqualTo(2000);
        assertThat(curve).hasSize(201);
    }

    @Test
    void anUnknownPullIsRefusedWithTheNamesThereAre() throws Exception {
        Path session = session();
        pullproof.run("add-pulls", session, pull("b1.csv"), "--setup", "base");
        Outcome refused = pullproof.run("pulls", session, "base-7");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("There is no pull \"base-7\"; the pulls are base-1.");
    }

    @Test
    void peopleGetTheAnswerAndATable() throws Exception {
        Path session = session();
        pullproof.run("add-pulls", session, pull("b1.csv"), "--setup", "base");
        String told = pullproof.run("pulls", session, "--units", "metric").out();
        assertThat(told).startsWith("Base makes ").contains("128.2\u00a0kW", "5,350", "not corrected");
    }

    @Test
    void aSessionWithoutPullsSaysWhatToDoFirst() {
        assertThat(pullproof.run("pulls", session()).out()).startsWith("No pull yet: ");
    }
}
