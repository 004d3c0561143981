package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangesCommandTest {
    /** The invented timing sweep: total degrees and hp in the order of the pulls. */
    private static final int[] DEGREES = {32, 26, 35, 29, 38, 32, 29, 35, 26, 38, 32};

    private static final double[] HP = {222.4, 215.6, 222.5, 218.5, 218.3, 221.0, 220.1, 221.2, 214.0, 219.9, 221.3};
    private static final double KW_PER_HP = 0.74569987;

    @TempDir
    Path folder;

    private PullFolder car;

    @BeforeEach
    void begin() {
        car = new PullFolder(folder);
    }

    /** Pulls of s1_aba.csv as files; difference, scatter and drift by R lm on the whitened data, 6 decimals. */
    @Test
    void pullFilesGoInAndTheChangeOfRComesOut() throws IOException {
        car.pull("A", 96.74, 96.67, 96.40);
        car.pull("B", 97.25, 97.26, 97.44);
        car.pull("A", 95.42, 94.96, 95.25);
        JsonNode ledger = car.json("changes");
        JsonNode change = ledger.get("changes").get(0);
        assertThat(ledger.get("changes")).hasSize(1);
        assertThat(change.get("differencePercent").asDouble()).isCloseTo(1.476044, within(1e-5));
        assertThat(ledger.get("repeatabilityPercent").asDouble()).isCloseTo(0.429382, within(1e-5));
        assertThat(ledger.get("driftPercentPerPull").asDouble()).isCloseTo(-0.177530, within(1e-5));
        assertThat(change.get("call").asText()).isEqualTo("gain");
        assertThat(change.get("holdsForAll").asBoolean()).isTrue();
    }

    @Test
    void setupsHaveTheNamesPeopleGaveThem() throws IOException {
        car.pull("Base", 96.7, 96.6);
        car.pull("Timing 32°", 97.2, 97.3);
        JsonNode change = car.json("changes").get("changes").get(0);
        assertThat(change.get("from").asText()).isEqualTo("Base");
        assertThat(change.get("to").asText()).isEqualTo("Timing 32°");
        assertThat(change.get("recorded").asBoolean()).isTrue();
    }

    @Test
    void aStepFromASetupThatWasNeverPulledStandsApart() throws IOException {
        car.pull("A", 96.7);
        JsonNode ledger = car.json("changes");
        assertThat(ledger.get("changes")).isEmpty();
        assertThat(ledger.at("/notJudged/0/name").asText()).isEqualTo("as found → A");
    }

    @Test
    void peopleReadTheAnswerFirst() throws IOException {
        car.pull("A", 100, 100.1);
        car.pull("B", 97, 97.1);
        car.pull("A", 100, 100.1);
        assertThat(car.run("changes", car.car()).out()).startsWith("One loss. B made \u22123.0");
    }

    /** The story: best 33.5–33.7°, use 31–32°, next none or 33; never 35 because it read most. */
    @Test
    void theSweepOfTheStoryEndsAtTheLeastAdvance() throws IOException {
        sweep();
        JsonNode ledger = car.json("changes");
        JsonNode sweep = ledger.at("/sweeps/0");
        assertThat(sweep.get("factor").asText()).isEqualTo("timing");
        assertThat(sweep.get("best").asDouble()).isBetween(33.45, 33.75);
        assertThat(sweep.get("recommended").asDouble()).isBetween(31.0, 32.0);
        assertThat(sweep.has("next")).isFalse();
        assertThat(sweep.get("bounded").asBoolean()).isTrue();
    }

    @Test
    void peopleReadTheSweepInASentence() throws IOException {
        sweep();
        assertThat(car.run("changes", car.car()).out()).contains("Use 31°: the least advance within half a percent");
    }

    /** The story: a gain of 2.6 % from a lighter flywheel must be refused. */
    @Test
    void aLighterFlywheelIsShownButNotCalled() throws IOException {
        car.pull("A", 100, 100.1, 100.05);
        for (double kilowatt : new double[] {102.6, 102.7, 102.65}) {
            car.add("light", rpm -> kilowatt, "--touches", "flywheel");
        }
        car.pull("A", 100, 100.1);
        JsonNode change = car.json("changes").at("/changes/0");
        assertThat(change.get("call").asText()).isEqualTo("spoiled");
        assertThat(change.get("differencePercent").asDouble()).isCloseTo(2.6, within(0.1));
        assertThat(change.get("sentence").asText()).contains("flywheel changed");
        assertThat(car.json("pulls").at("/pulls/3/flags/0").asText()).startsWith("rotating-parts: flywheel");
    }

    @Test
    void aChangeMadeWithTheSameLightFlywheelCanBeCalled() throws IOException {
        car.pull("A", 100, 100.1);
        car.add("light", rpm -> 102.6, "--touches", "flywheel");
        car.pull("light", 102.7);
        car.pull("light and jets", 106, 106.1);
        car.pull("light", 102.6, 102.7);
        assertThat(callOf(car.json("changes"), "light", "light and jets")).isEqualTo("gain");
    }

    @Test
    void anOddPullIsFlaggedAndTheOpenCallNamesIt() throws IOException {
        car.pull("A", 100, 100.1, 100.05);
        car.pull("B", 101.2, 101.3, 94);
        car.pull("A", 100, 100.1, 99.95);
        car.pull("B", 101.25, 101.2, 101.3);
        car.pull("A", 100, 100.1, 100.05);
        assertThat(car.json("pulls").at("/pulls/5/flags/0").asText()).startsWith("odd: it lies");
        JsonNode change = car.json("changes").at("/changes/0");
        assertThat(change.at("/hingesOn/0").asText()).isEqualTo("B-3");
        assertThat(change.get("call").asText()).isEqualTo("no-call");
    }

    @Test
    void ofARunOfTwoBothAreNamed() throws IOException {
        car.pull("A", 100, 100.1, 100.05, 100.02);
        car.pull("B", 101.2, 94);
        car.pull("A", 100, 100.1, 99.95, 100.03);
        car.pull("B", 101.25, 101.2, 101.3, 101.22);
        car.pull("A", 100, 100.1, 100.05);
        JsonNode pulls = car.json("pulls");
        assertThat(pulls.at("/pulls/4/flags/0").asText())
                .contains("B-1")
                .contains("B-2")
                .contains("do a third");
        assertThat(pulls.at("/pulls/5/flags/0").asText())
                .contains("B-1")
                .contains("B-2")
                .contains("do a third");
    }

    @Test
    void aPullWithAStepInItsCurveHasAnotherShape() throws IOException {
        for (int i = 0; i < 4; i++) {
            double kilowatt = 100 + 0.1 * i;
            car.add("A", rpm -> kilowatt * (1 + 0.001 * Math.sin(rpm)));
        }
        car.add("A", rpm -> rpm < 3500 ? 100 : 96);
        JsonNode pulls = car.json("pulls");
        assertThat(pulls.at("/pulls/4/flags").toString()).contains("\"shape: ");
        assertThat(pulls.at("/pulls/0/flags").toString()).doesNotContain("shape");
    }

    @Test
    void aGainOverSomeSpeedsIsARegion() throws IOException {
        for (int round = 0; round < 2; round++) {
            car.pull("A", 100, 100.1, 100.05);
            for (int i = 0; i < 3; i++) {
                double level = 100 + 0.05 * i;
                car.add("B", rpm -> level * (1 + 0.04 * Math.exp(-Math.pow((rpm - 3400) / 400.0, 2))));
            }
        }
        car.pull("A", 100, 100.1, 100.05);
        JsonNode region = car.json("changes").at("/changes/0/regions/0");
        assertThat(region.get("sign").asInt()).isEqualTo(1);
        assertThat(region.get("fromRpm").asInt()).isBetween(2800, 3200);
        assertThat(region.get("toRpm").asInt()).isBetween(3600, 4000);
    }

    @Test
    void anOpenChangeSaysHowManyMorePullsWouldSettleIt() throws IOException {
        car.pull("A", 100, 100.4);
        car.pull("B", 100.9, 101.2);
        JsonNode change = car.json("changes").at("/changes/0");
        assertThat(change.get("call").asText()).isEqualTo("no-call");
        assertThat(change.get("pullsToSettle").asInt()).isBetween(2, 16);
        assertThat(change.get("sentence").asText())
                .contains("make them all, then read")
                .contains("One more pull on A");
    }

    @Test
    void whatAChangeCostIsToldLaterAndPutRight() throws IOException {
        car.pull("A", 100);
        car.pull("jets", 101);
        CommandHarness.Outcome outcome =
                car.run("change", car.car(), "jets", "--what", "main jets 70 to 72", "--cost", "18USD", "--json");
        assertThat(outcome.status()).isZero();
        assertThat(outcome.out()).contains("\"cost\": \"18 USD\"").contains("main jets 70 to 72");
        assertThat(car.run("report", car.car()).out()).contains("$18");
    }

    private void sweep() throws IOException {
        for (int i = 0; i < HP.length; i++) {
            double kilowatt = HP[i] * KW_PER_HP;
            car.add("t" + DEGREES[i], rpm -> kilowatt, "--level", "timing=" + DEGREES[i] + "deg");
        }
    }

    private static String callOf(JsonNode ledger, String from, String to) {
        List<String> calls = new ArrayList<>();
        ledger.get("changes").forEach(change -> {
            List<String> sides =
                    List.of(change.get("from").asText(), change.get("to").asText());
            if (sides.containsAll(List.of(from, to))) {
                calls.add(change.get("call").asText());
            }
        });
        return String.join(",", calls);
    }
}
