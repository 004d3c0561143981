package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.cli.CommandHarness.Outcome;

/** The air in every form it can be typed in. */
class WeatherCommandTest {
    private static final String REPORT = "XXXX 121151Z 24016G28KT 10SM FEW250 25/10 Q1012";

    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path place;

    private Outcome weather(Object... more) {
        Object[] all = new Object[more.length + 1];
        all[0] = "weather";
        System.arraycopy(more, 0, all, 1, more.length);
        return pullproof.run(all);
    }

    private JsonNode json(Object... more) throws Exception {
        Object[] all = Arrays.copyOf(more, more.length + 1);
        all[more.length] = "--json";
        Outcome outcome = weather(all);
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.status()).isZero();
        return new ObjectMapper().readTree(outcome.out());
    }

    private Path session() {
        Path session = place.resolve("car");
        pullproof.run("new", session, "--profile", "v8-distributor-order-a", "--name", "grey coupé");
        return session;
    }

    /** ASHRAE Fundamentals 2017, chapter 1, example 1: 40 °C and a wet bulb of 20 °C are 14 % and a dew point of 7 °C. */
    @Test
    void aWetBulbIsTaken() throws Exception {
        JsonNode air = json("--pressure", "101.325kPa", "--temperature", "40C", "--wet-bulb", "20C");
        assertThat(air.get("relativeHumidity").asDouble()).isCloseTo(0.14, within(0.005));
        assertThat(air.get("dewPointC").asDouble()).isCloseTo(7, within(0.5));
        assertThat(air.get("wetBulbC").asDouble()).isCloseTo(20, within(1e-4));
    }

    @Test
    void withoutMoistureTheMiddleStandsAndTheRangeIsSaid() throws Exception {
        JsonNode air = json("--pressure", "99kPa", "--temperature", "30C");
        JsonNode dry = json("--pressure", "99kPa", "--temperature", "30C", "--humidity", "55%");
        assertThat(air.at("/factors/sae-j1349/factor")).isEqualTo(dry.at("/factors/sae-j1349/factor"));
        String moisture = "/factors/sae-j1349/parts/moisture";
        assertThat(air.at(moisture).asDouble())
                .isCloseTo(70 * dry.at(moisture).asDouble(), within(1e-3)); // ± 35 for ± 0.5 %
        assertThat(air.get("notes").toString()).contains("No moisture was told: 20 to 90 %");
    }

    /** The middle of what Q1012 stands for, 1012.5 hPa (WMO No. 306, 15.12: rounded down); vapour at 10 °C, 1.228 kPa (IAPWS). */
    @Test
    void aReportGivesPressureAndVapourButNotTheIntakesTemperature() throws Exception {
        JsonNode air = json("--metar", REPORT, "--elevation", "0m", "--temperature", "32C");
        assertThat(air.get("stationPressureKpa").asDouble()).isCloseTo(101.25, within(1e-6));
        assertThat(air.get("vapourPressureKpa").asDouble()).isCloseTo(1.228, within(0.0015));
        assertThat(air.get("temperatureC").asDouble()).isEqualTo(32);
        assertThat(air.at("/metar/temperatureC").asDouble()).isEqualTo(25);
        assertThat(air.get("notes").toString()).contains("own temperature is 25 °C; that of the intake was typed");
    }

    @Test
    void withoutAnIntakeTemperatureTheReportsStandsWithAWideUncertainty() throws Exception {
        JsonNode air = json("--metar", REPORT, "--elevation", "0m");
        assertThat(air.get("temperatureC").asDouble()).isCloseTo(25, within(1e-9));
        assertThat(air.at("/factors/sae-j1349/parts/temperature").asDouble()).isGreaterThan(0.008);
        assertThat(air.get("notes").toString()).contains("which nobody read");
    }

    @Test
    void whatAReportDoesNotTellIsSaidByName() throws Exception {
        JsonNode air = json("--metar", "XXXX 121151Z 10SM M05//// Q1012", "--elevation", "0m", "--temperature", "20C");
        assertThat(air.at("/metar/missing")).hasSize(2);
        assertThat(air.get("notes").toString()).contains("The METAR tells no temperature and no dew point.");
    }

    @ParameterizedTest
    @CsvSource({
        "XXXX 121151Z 25/10 Q////, The METAR has no pressure (A or Q group)",
        "XXXX 121151Z 25/10 RMK SLP982, it has a sea-level pressure of 998.2 hPa",
        "XXXX 121151Z Q1012, The METAR has no temperature"
    })
    void aReportWithoutWhatIsNeededIsRefused(String report, String sentence) {
        Outcome refused = weather("--metar", report, "--elevation", "0m");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains(sentence);
    }

    /** ISO 2533: 101.325 kPa at sea level is 95.461 kPa at 500 m. */
    @Test
    void aSeaLevelPressureIsNamedAsSuchAndLessExactThanASetting() throws Exception {
        String[] rest = {"--elevation", "500m", "--temperature", "20C", "--humidity", "40%"};
        JsonNode sea = json(with("--sea-level", "101.325kPa", rest));
        JsonNode setting = json(with("--altimeter", "101.325kPa", rest));
        assertThat(sea.get("stationPressureKpa").asDouble()).isCloseTo(95.461, within(0.005));
        assertThat(sea.get("read").asText()).startsWith("sea-level pressure 101.325 kPa at 500 m");
        assertThat(sea.at("/factors/sae-j1349/parts/pressure").asDouble())
                .isGreaterThan(
                        10 * setting.at("/factors/sae-j1349/parts/pressure").asDouble());
    }

    private static Object[] with(String option, String value, String... rest) {
        Object[] all = new Object[rest.length + 2];
        all[0] = option;
        all[1] = value;
        System.arraycopy(rest, 0, all, 2, rest.length);
        return all;
    }

    /** ISO 2533: 95.461 kPa at 500 m goes with 89.875 kPa at 1000 m. */
    @Test
    void aStationPressureReadElsewhereIsCarriedToTheGarage() throws Exception {
        JsonNode air =
                json("--pressure", "95.461kPa", "--read-at", "500m", "--elevation", "1000m", "--temperature", "20C");
        assertThat(air.get("stationPressureKpa").asDouble()).isCloseTo(89.875, within(0.005));
    }

    @Test
    void aPressureThatLooksLikeASettingIsRefusedWithBothFactorsAndTheWayOut() {
        Outcome refused =
                weather("--pressure", "101.3kPa", "--elevation", "600m", "--temperature", "30C", "--humidity", "60%");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err().lines())
                .containsExactly("air: 101.3 kPa at 600 m looks like an altimeter setting: the station pressure there"
                        + " would be 94.3 kPa. Factor 1.104 as altimeter setting, 1.013 as station pressure, SAE J1349."
                        + " To take it as one, type --altimeter 101.3kPa --elevation 600m instead of --pressure.");
    }

    /** At 800 ft it could be either: told, and warned of. */
    @Test
    void aDoubtfulPressureIsToldWithAWarning() throws Exception {
        JsonNode air =
                json("--pressure", "101.5kPa", "--elevation", "800ft", "--temperature", "30C", "--humidity", "60%");
        assertThat(air.get("warnings"))
                .singleElement()
                .satisfies(warning -> assertThat(warning.asText())
                        .contains("lies nearer to an altimeter setting")
                        .contains("as altimeter setting"));
    }

    @ParameterizedTest
    @CsvSource({
        "20C, --wet-bulb, 25C, The wet bulb 25 °C is above the temperature",
        "20C, --dew-point, 25C, The dew point 25 °C is above the temperature",
        "20C, --humidity, 140%, 140 % is not a relative humidity"
    })
    void moistureThatCannotBeIsRefused(String temperature, String option, String value, String sentence) {
        Outcome refused = weather("--pressure", "99kPa", "--temperature", temperature, option, value);
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains(sentence);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--altimeter", "--sea-level"})
    void aReducedPressureWithoutElevationIsWrongUsage(String option) {
        Outcome refused = weather(option, "101.3kPa", "--temperature", "20C");
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("need the --elevation of the place where the engine breathes");
    }

    @Test
    void onlyAReportMayStandWithoutATemperature() {
        Outcome refused = weather("--pressure", "99kPa", "--humidity", "40%");
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("--temperature");
    }

    /** (P + FP) k − FP: in air of k = 1.05, 85 kW and 15 kW of friction are 90 kW. 99/1.05 kPa is 94.2857. */
    @Test
    void knownFrictionReplacesTheAssumedEfficiency() throws Exception {
        JsonNode air = json(
                "--pressure",
                "94.2857kPa",
                "--temperature",
                "25C",
                "--humidity",
                "0%",
                "--power",
                "85kW",
                "--friction",
                "15kW");
        assertThat(air.at("/factors/sae-j1349/correctedPowerKw").asDouble()).isCloseTo(90, within(1e-3));
    }

    @Test
    void frictionWithoutItsPowerIsWrongUsage() {
        Outcome refused = weather("--pressure", "99kPa", "--temperature", "25C", "--friction", "15kW");
        assertThat(refused.status()).isEqualTo(2);
    }

    @Test
    void everyFactorTellsItsReferenceFormRangeAndStatus() throws Exception {
        JsonNode factor = json("--pressure", "83.8kPa", "--temperature", "30C", "--humidity", "22%")
                .at("/factors/sae-j1349");
        assertThat(factor.get("reference").asText()).isEqualTo("25 °C, 99 kPa dry");
        assertThat(factor.get("pressure").asText()).startsWith("dry");
        assertThat(factor.get("withinRange").asBoolean()).isFalse();
        assertThat(factor.at("/outside/0").asText()).startsWith("dry pressure 82.9\u00a0kPa below the range");
        assertThat(factor.at("/outside/0").asText()).endsWith("compare on the day, don't quote.");
    }

    @Test
    void peopleReadWhatMovesTheFactor() {
        String told = weather("--pressure", "98.2kPa", "--temperature", "30C", "--humidity", "60%")
                .out();
        assertThat(told)
                .contains("What moves the factor of SAE J1349: pressure ±\u00a00.0006, temperature ±", ", moisture ±")
                .contains("wheel power is a convention")
                .contains("UN R85");
    }

    @Test
    void theSessionsElevationServesASetting() throws Exception {
        Path session = session();
        pullproof.run("set", session, "elevation=600m");
        JsonNode air = json("--altimeter", "101.3kPa", "--temperature", "30C", "--session", session);
        assertThat(air.get("stationPressureKpa").asDouble()).isCloseTo(94.3, within(0.05));
        assertThat(Files.readString(session.resolve("session.json")))
                .containsSubsequence("altimeter-setting", "101.3 kPa", "600 m");
    }

    /** The story of the seller's sheet through the command line: 248 hp J607 against 240.0 ± 1.5 hp J1349 now. */
    @Test
    void aSellersFigureIsStoredAsStatedAndHeldAgainstThePulls() throws Exception {
        Path session = session();
        json(
                "--pressure",
                "99.00kPa",
                "--temperature",
                "25.0C",
                "--humidity",
                "0%",
                "--session",
                session,
                "--at",
                "2026-06-14T13:40");
        for (String peak : new String[] {"239.1", "240.0", "240.9"}) {
            pullproof.run("add-pulls", session, pull(peak), "--setup", "base", "--at", "2026-06-14T13:45");
        }
        pullproof.run("set", session, "seller-figure=248hp sae-j607");
        JsonNode stated = new ObjectMapper()
                .readTree(pullproof.run("pulls", session, "--json").out())
                .get("stated");
        double hp = 0.7456998715822702;
        assertThat(stated.get("lowKw").asDouble() / hp).isCloseTo(238.5, within(0.1));
        assertThat(stated.get("highKw").asDouble() / hp).isCloseTo(241.2, within(0.1));
        assertThat(stated.get("differenceHalfWidthKw").asDouble() / hp).isCloseTo(16, within(0.3));
        assertThat(stated.get("call").asText()).isEqualTo("no-call");
        assertThat(stated.get("sentence").asText()).contains("no call; nothing lost is shown");
        assertThat(stated.get("missing").toString()).contains("wheels or at the crank", "in which air");
        assertThat(pullproof.run("report", session).out()).containsIgnoringWhitespaces("nothing lost is shown");
    }

    private Path pull(String peak) throws Exception {
        StringBuilder rows = new StringBuilder("rpm,power [hp]\n");
        for (int rpm = 2000; rpm <= 6000; rpm += 25) {
            rows.append(rpm).append(',').append(rpm == 5000 ? peak : "200").append('\n');
        }
        return Files.writeString(place.resolve("p" + peak + ".csv"), rows);
    }

    @Test
    void aFigureThatCannotBeReadIsRefusedWithItsShape() {
        Outcome refused = pullproof.run("set", session(), "seller-figure=lots");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("seller-figure: \"lots\" is none of its words: write a power");
    }

    @Test
    void aReportIsKeptWordForWordWithThePlace() throws Exception {
        Path session = session();
        json("--metar", REPORT, "--elevation", "10m", "--session", session, "--place", "gate of the hall");
        assertThat(Files.readString(session.resolve("session.json")))
                .contains("gate of the hall", "\"metar\": \"" + REPORT + "\"");
    }
}
