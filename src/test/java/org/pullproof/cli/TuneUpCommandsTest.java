package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.cli.CommandHarness.Outcome;

/** The tune-up from the command line; the steps are common practice without a source. */
class TuneUpCommandsTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path folder;

    private Path car;

    @BeforeEach
    void anEngineToTune() {
        car = folder.resolve("car");
        done("new", car, "--profile", "v8-distributor-order-a", "--name", "grey car");
        done("set", car, "odometer=84000mi", "access=own-it", "runs=yes");
    }

    private Outcome done(Object... arguments) {
        Outcome outcome = pullproof.run(arguments);
        assertThat(outcome.status()).as(outcome.err()).isZero();
        return outcome;
    }

    private void upTo(String... steps) {
        for (String step : steps) {
            done("steps", car, "--done", step);
        }
    }

    private void airCleanerTouched() {
        done("steps", car, "--want", "n");
        upTo("a", "b", "c", "n");
        done("steps", car, "--back", "battery lead", "--back", "throttle return spring", "--back", "air cleaner");
    }

    @Test
    void aStartWithTwoThingsOffIsRefusedWithBothAndPassedAfterAReason() {
        airCleanerTouched();
        Outcome refused = pullproof.run("steps", car, "--done", "o");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("breather hose: still off; hot-air duct: still off");

        done("steps", car, "--leave-off", "breather hose=comes Monday", "--leave-off", "hot-air duct=it is summer");
        done("steps", car, "--done", "o");
        assertThat(done("report", car).out())
                .contains("breather hose: comes Monday")
                .contains("hot-air duct: it is summer")
                .contains("local law");
    }

    @Test
    void theShelfTellsWhatIsOffSinceWhenAndWhereItLies() {
        done(
                "steps",
                car,
                "--off",
                "hose of the canister",
                "--note",
                "hose of the canister=left tray",
                "--at",
                "2026-06-14T10:00");
        assertThat(done("steps", car, "--json").out())
                .contains("\"part\": \"hose of the canister\"")
                .contains("\"since\": \"2026-06-14T10:00\"")
                .contains("\"note\": \"left tray\"")
                .contains("hose of the canister: still off");
    }

    @Test
    void plugsComeBackOneByOne() {
        done("steps", car, "--want", "plugs and wires only");
        upTo("a", "b", "c", "d", "e");
        assertThat(done("steps", car, "--fit", "plugs=1,3").out()).contains("plugs: still off, back on 1, 3 only");
        assertThat(pullproof.run("steps", car, "--fit", "plugs=9").err()).contains("cylinders 1 to 8");
    }

    @Test
    void twoSwappedWiresAreNamed() {
        assertThat(done("steps", car, "--cap", "1,8,4,3,6,7,5,2").out())
                .contains("The wires of cylinders 5 and 7 are swapped at the cap");
    }

    @Test
    void whatWasPaidIsSpentAndTheRestIsStillToBuy() {
        done("steps", car, "--want", "plugs and wires only");
        String parts = done("parts", car, "--bought", "spark plugs=28USD", "--kept", "plug wires=61000mi", "--json")
                .out();
        assertThat(parts).contains("\"fate\": \"bought\"").contains("23,000");
        assertThat(done("worth", car, "--json").out()).contains("\"notCounted\": 28.0");
    }

    @Test
    void theSettingsAddUpAndAreSavedAsASetup() {
        String settings = done(
                        "settings",
                        car,
                        "base-timing=10deg",
                        "mechanical-advance=22deg",
                        "pull-rpm=3500rpm",
                        "throttle=91%",
                        "--save-as",
                        "as tuned",
                        "--json")
                .out();
        assertThat(settings)
                .contains("\"totalDegrees\": 32.0")
                .contains("\"setupNow\": \"as tuned\"")
                .contains("98");
    }

    @Test
    void aSettingThatIsNotKnownIsRefusedWithThoseThatAre() {
        assertThat(pullproof.run("settings", car, "advance=10deg").err()).contains("mechanical-advance");
    }

    @Test
    void aSetLashClosesTheReadingsBeforeItAndNewPlugsDoNot() throws IOException {
        Path readings = Files.writeString(folder.resolve("readings.csv"), """
                test,cylinder,value
                compression-dry,1,158psi
                compression-dry,3,92psi
                """);
        done("add-readings", car, readings);
        done("work", car, "--done", "ignition-parts=all");
        assertThat(done("health", car, "--json").out()).contains("634.");

        done("work", car, "--done", "lash-set=3");
        assertThat(done("health", car, "--json").out()).doesNotContain("634.");
    }

    @Test
    void newRingsLockTheFullLoadUntilTheyAreBedded() {
        assertThat(done("work", car, "--new", "rings").out()).contains("No full-load pull yet");
        assertThat(done("work", car, "--bedded", "rings=the builder says so", "--json")
                        .out())
                .doesNotContain("fullLoadLock");
    }

    @Test
    void theRunCardHasABoxForEachStepAndEachPart() throws IOException {
        Path card = folder.resolve("card.txt");
        done("steps", car, "--want", "plugs and wires only", "--card", card);
        assertThat(Files.readString(card))
                .contains("[ ] h   Plugs: reach and gap")
                .contains("[ ] battery lead")
                .contains("back: [ ] battery lead")
                .contains("! Goggles when blowing the wells")
                .contains("service manual");
        assertThat(pullproof
                        .run("steps", car, "--card", folder.resolve("card.doc"))
                        .status())
                .isEqualTo(2);
    }

    /** What is done needs no box and no caution; what is still to do keeps both. */
    @Test
    void aStepThatIsDoneIsOneLineOnTheRunCard() throws IOException {
        Path card = folder.resolve("card.txt");
        done("steps", car, "--done", "a", "--card", card);
        String whole = Files.readString(card);
        String first = whole.substring(whole.indexOf("[x] a"), whole.indexOf("\n\n", whole.indexOf("[x] a")));
        assertThat(first).doesNotContain("!", "[ ]");
        assertThat(whole).contains("[ ] b").contains("! Goggles when blowing the wells");
    }

    @Test
    void theRunCardPrintsAsPdf() throws IOException {
        Path card = folder.resolve("card.pdf");
        done("steps", car, "--card", card);
        assertThat(Files.readAllBytes(card)).startsWith("%PDF-".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }

    @Test
    void editedStepsAreFollowedAndACircleIsNamed() throws IOException {
        Path steps = folder.resolve("steps.json");
        done("steps", car, "--write", steps);
        String own = Files.readString(steps);
        Files.writeString(steps, own.replace("Air cleaner off, open stubs capped", "Lid off, two clips"));
        assertThat(done("steps", car, "--own", steps).out()).contains("Lid off, two clips");

        Files.writeString(steps, own.replaceFirst("\"needs\"\\s*:\\s*\\[\\s*\"a\"\\s*]", "\"needs\": [\"c\"]"));
        Outcome refused = pullproof.run("steps", car, "--own", steps);
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("steps.json").contains("circle");

        assertThat(done("steps", car, "--no-own").out()).contains("Air cleaner off, open stubs capped");
    }
}
