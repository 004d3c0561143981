package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanCommandTest {
    private final CommandHarness pullproof = new CommandHarness();

    /** Section 6 of the method: A-B-A with 2 each sees 1.5 % at a scatter of 0.5 %. */
    @Test
    void anOrderTellsWhatItCanSee() throws IOException {
        JsonNode plan = json("plan", "--order", "A,B,A", "--pulls", 2, "--scatter", "0.5%", "--json");
        assertThat(plan.get("detectablePercent").asDouble()).isCloseTo(1.5, within(0.1));
        assertThat(plan.get("totalPulls").asInt()).isEqualTo(6);
        assertThat(plan.get("controlPulls").asInt()).isEqualTo(2);
        assertThat(plan.get("order")).hasSize(3);
    }

    /** Rule of thumb of section 6: +2 % at 0.5 % needs A-B-A with 2 each. */
    @Test
    void aGainGetsTheOrderThatSeesIt() throws IOException {
        JsonNode plan = json("plan", "--gain", "2%", "--scatter", "0.5%", "--json");
        assertThat(plan.get("pullsPerSetup").asInt()).isEqualTo(2);
        assertThat(plan.get("totalPulls").asInt()).isEqualTo(6);
        assertThat(plan.get("enough").asBoolean()).isTrue();
    }

    @Test
    void whatTheTimeDoesNotAllowIsSaidWithTheMostThatItDoes() {
        String words = pullproof.run("plan", "--gain", "0.5%", "--minutes", 30).out();
        assertThat(words)
                .startsWith("A gain of 0.5\u00a0% cannot be seen in that time.")
                .contains("sees a gain of");
    }

    @Test
    void anOrderThatNeverComesBackIsWarnedOf() {
        assertThat(pullproof.run("plan", "--order", "A,B", "--pulls", 3).out()).contains("It never comes back");
    }

    @Test
    void withoutPullsTheScatterIsTheAssumedOne(@TempDir Path folder) throws IOException {
        PullFolder car = new PullFolder(folder);
        JsonNode plan = json("plan", car.car(), "--gain", "2%", "--json");
        assertThat(plan.get("scatterPercent").asDouble()).isEqualTo(0.6);
    }

    @Test
    void theScatterOfTheSessionIsUsed(@TempDir Path folder) throws IOException {
        PullFolder car = new PullFolder(folder);
        car.pull("A", 100, 101.5, 99, 102, 98.5);
        JsonNode plan = json("plan", car.car(), "--gain", "4%", "--json");
        assertThat(plan.get("scatterPercent").asDouble()).isGreaterThan(0.8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "plan --gain 1", "plan --gain 1% --order A,B", "plan --order A,B,A"})
    void halfAQuestionIsWrongUsage(String line) {
        CommandHarness.Outcome outcome = pullproof.run((Object[]) line.split(" "));
        assertThat(outcome.status()).isEqualTo(2);
    }

    @Test
    void anOrderOfOneSetupIsASentence() {
        CommandHarness.Outcome outcome = pullproof.run("plan", "--order", "A,A", "--pulls", 2);
        assertThat(outcome.status()).isEqualTo(1);
        assertThat(outcome.err()).contains("at least two setups");
    }

    private JsonNode json(Object... arguments) throws IOException {
        CommandHarness.Outcome outcome = pullproof.run(arguments);
        assertThat(outcome.err()).isEmpty();
        return new ObjectMapper().readTree(outcome.out());
    }
}
