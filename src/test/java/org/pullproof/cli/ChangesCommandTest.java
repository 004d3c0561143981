package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangesCommandTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    Path folder;

    private Path car;
    private int pulls;

    @BeforeEach
    void begin() {
        car = folder.resolve("car");
        pullproof.run("new", car, "--profile", "i4-distributor", "--name", "car");
    }

    /** Pulls of s1_aba.csv as files; difference, scatter and drift by R lm on the whitened data, 6 decimals. */
    @Test
    void pullFilesGoInAndTheChangeOfRComesOut() throws IOException {
        pull("A", 96.74, 96.67, 96.40);
        pull("B", 97.25, 97.26, 97.44);
        pull("A", 95.42, 94.96, 95.25);
        JsonNode ledger = changes();
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
        pull("Base", 96.7, 96.6);
        pull("Timing 32°", 97.2, 97.3);
        JsonNode change = changes().get("changes").get(0);
        assertThat(change.get("from").asText()).isEqualTo("Base");
        assertThat(change.get("to").asText()).isEqualTo("Timing 32°");
        assertThat(change.get("recorded").asBoolean()).isTrue();
    }

    @Test
    void aStepFromASetupThatWasNeverPulledStandsApart() throws IOException {
        pull("A", 96.7);
        JsonNode ledger = changes();
        assertThat(ledger.get("changes")).isEmpty();
        assertThat(ledger.at("/notJudged/0/name").asText()).isEqualTo("as found → A");
    }

    @Test
    void peopleReadTheAnswerFirst() throws IOException {
        pull("A", 100, 100.1);
        pull("B", 97, 97.1);
        pull("A", 100, 100.1);
        assertThat(pullproof.run("changes", car).out()).startsWith("One loss. B made \u22123.0");
    }

    private JsonNode changes() throws IOException {
        CommandHarness.Outcome outcome = pullproof.run("changes", car, "--json");
        assertThat(outcome.err()).isEmpty();
        return new ObjectMapper().readTree(outcome.out());
    }

    /** Pulls whose power is the same at every speed, so that any band has it; there is no air, so measured power counts. */
    private void pull(String setup, double... kilowatts) throws IOException {
        for (double kilowatt : kilowatts) {
            StringBuilder file = new StringBuilder("rpm,power kW\n");
            for (int rpm = 2000; rpm <= 5000; rpm += 20) {
                file.append(rpm).append(',').append(kilowatt).append('\n');
            }
            Path made = Files.writeString(folder.resolve("pull-" + ++pulls + ".csv"), file);
            String time = String.format(java.util.Locale.ROOT, "2026-06-14T13:%02d", 3 * pulls);
            CommandHarness.Outcome outcome = pullproof.run("add-pulls", car, made, "--setup", setup, "--at", time);
            assertThat(outcome.status()).as(outcome.err()).isZero();
        }
    }
}
