package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProfilesTdcTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    Path folder;

    @Test
    void everyProfileIsListedWithItsName() throws Exception {
        JsonNode profiles = json("profiles", "--json").get("profiles");
        assertThat(profiles).hasSizeGreaterThanOrEqualTo(12);
        assertThat(profiles.findValuesAsText("id"))
                .contains("v8-distributor-order-a", "v6-odd-fire-90", "v12-coil-on-plug");
    }

    /** Army TM 5-4210-230-14&P-1: 5 and 7 side by side, 8 and 4 on one bank. */
    @Test
    void oneProfileShowsItsOrderBanksAndWires() throws Exception {
        JsonNode shown = json("profiles", "v8-distributor-order-a", "--json");
        assertThat(shown.get("cylinders").asInt()).isEqualTo(8);
        assertThat(shown.get("firingOrder").toString()).isEqualTo("[1,8,4,3,6,5,7,2]");
        assertThat(shown.at("/banks/0/cylinders").toString()).isEqualTo("[1,3,5,7]");
        assertThat(shown.at("/crossfirePairs/1").toString()).isEqualTo("{\"cylinders\":[5,7],\"adjacent\":true}");
    }

    @Test
    void peopleReadWhichWiresComeFirst() {
        assertThat(pullproof.run("profiles", "v8-distributor-order-a").out())
                .contains("8 and 4, 5 and 7 (side by side: first)");
    }

    /** Odd intervals by the list: 150 and 90 in turn. */
    @Test
    void topDeadCentresFollowTheListOfIntervals() throws Exception {
        JsonNode cylinders = json("tdc", "v6-odd-fire-90", "--json").get("cylinders");
        assertThat(cylinders.get(1).toString())
                .isEqualTo("{\"number\":6,\"crankDegrees\":150,\"damperDegrees\":150,\"rotorDegrees\":75.0}");
        assertThat(cylinders.get(5).get("crankDegrees").asInt()).isEqualTo(630);
    }

    @Test
    void withoutADistributorNoRotorIsTold() throws Exception {
        assertThat(json("tdc", "i4-coil-on-plug", "--json").at("/cylinders/0").has("rotorDegrees"))
                .isFalse();
        assertThat(pullproof.run("tdc", "i4-coil-on-plug").out()).doesNotContain("rotor");
    }

    @Test
    void anUnknownProfileIsRefusedWithTheOnesThereAre() {
        CommandHarness.Outcome outcome = pullproof.run("tdc", "v9");
        assertThat(outcome.status()).isEqualTo(1);
        assertThat(outcome.err()).startsWith("v9: ").contains("i3-coil-on-plug");
    }

    @Test
    void aProfileWhoseIntervalsDoNotCloseIsRefusedWithItsPlace() throws Exception {
        Path wrong = folder.resolve("mine.json");
        String right = Files.readString(Path.of("profiles/v6-odd-fire-90.json"));
        Files.writeString(wrong, right.replace("[150, 90, 150, 90, 150, 90]", "[150, 90, 150, 90, 150, 120]"));
        CommandHarness.Outcome outcome = pullproof.run("tdc", wrong);
        assertThat(outcome.status()).isEqualTo(1);
        assertThat(outcome.err()).contains("mine.json, intervals").contains("sum to 750°; four strokes need 720°");
    }

    @Test
    void aFiringOrderThatForgetsACylinderIsRefusedWithItsPlace() throws Exception {
        Path wrong = folder.resolve("mine.json");
        String right = Files.readString(Path.of("profiles/i4-distributor.json"));
        Files.writeString(wrong, right.replace("[1, 3, 4, 2]", "[1, 3, 4, 4]"));
        CommandHarness.Outcome outcome = pullproof.run("profiles", wrong);
        assertThat(outcome.status()).isEqualTo(1);
        assertThat(outcome.err()).contains("mine.json, firingOrder").contains("must name each cylinder");
    }

    private JsonNode json(Object... arguments) throws Exception {
        CommandHarness.Outcome outcome = pullproof.run(arguments);
        assertThat(outcome.err()).isEmpty();
        return new ObjectMapper().readTree(outcome.out());
    }
}
