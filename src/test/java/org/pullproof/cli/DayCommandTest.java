package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The points and rules are common practice, no source. */
class DayCommandTest {
    private final CommandHarness program = new CommandHarness();

    @TempDir
    Path folder;

    private String session;

    @BeforeEach
    void newCar() {
        session = folder.resolve("car").toString();
        program.run("new", session, "--profile", "v8-distributor-order-a", "--name", "invented");
    }

    @Test
    void theGateIsListedWithTheSignsToBreakOffAt() {
        String said = program.run("day", session).out();
        assertThat(said)
                .contains("closed")
                .contains("extinguisher")
                .contains("knock heard")
                .contains("clutch");
    }

    @Test
    void aTickAndAReasonAreKept() throws Exception {
        program.run("day", session, "--tick", "brakes", "--pass", "codes=no computer", "--at", "2026-06-14T13:40");
        JsonNode gate = day().path("gate");
        assertThat(state(gate, "brakes")).isEqualTo("ticked");
        assertThat(state(gate, "codes")).isEqualTo("passed");
    }

    @Test
    void aTickIsTakenBack() throws Exception {
        program.run("day", session, "--tick", "brakes", "--at", "2026-06-14T13:40");
        program.run("day", session, "--undo", "brakes", "--at", "2026-06-14T13:41");
        assertThat(state(day().path("gate"), "brakes")).isEqualTo("open");
    }

    @Test
    void anAbortTakesTheTicksAway() throws Exception {
        program.run("day", session, "--tick", "brakes", "--at", "2026-06-14T13:40");
        program.run("day", session, "--abort", "strap moved", "--at", "2026-06-14T14:02");
        JsonNode gate = day().path("gate");
        assertThat(state(gate, "brakes")).isEqualTo("open");
        assertThat(gate.at("/aborts/0/cause").asText()).isEqualTo("strap moved");
    }

    @Test
    void howTheCarStandsIsTold() throws Exception {
        program.run("day", session, "--tell", "tyres=240 kPa cold", "--at", "2026-06-14T13:40");
        assertThat(program.run("day", session).out()).contains("Tyres: 240 kPa cold");
        assertThat(day().at("/facts/tyres").asText()).isEqualTo("240 kPa cold");
    }

    @Test
    void thePlanOfTheDayNamesTheNextPull() throws Exception {
        program.run("day", session, "--plan", "base,jets,base", "--pulls", "1", "--at", "2026-06-14T09:00");
        assertThat(day().path("next").asText()).isEqualTo("base-1");
        assertThat(program.run("day", session).out()).contains("base-2").contains("to come");
    }

    @Test
    void whatIsDueBeforeThePullIsSaid() throws Exception {
        assertThat(day().path("beforeThePull"))
                .anySatisfy(due -> assertThat(due.asText()).contains("after the pull before"));
    }

    @Test
    void aWrongPointAndAWrongFactNameThoseThereAre() {
        assertThat(program.run("day", session, "--tick", "paint").err()).contains("no point of this gate", "brakes");
        assertThat(program.run("day", session, "--tell", "moon=full").err()).contains("straps");
    }

    private JsonNode day() throws Exception {
        return new ObjectMapper().readTree(program.run("day", session, "--json").out());
    }

    private static String state(JsonNode gate, String key) {
        for (JsonNode point : gate.path("points")) {
            if (point.path("key").asText().equals(key)) {
                return point.path("state").asText();
            }
        }
        return "";
    }
}
