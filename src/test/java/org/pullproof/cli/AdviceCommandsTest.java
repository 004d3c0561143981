package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.cli.CommandHarness.Outcome;

class AdviceCommandsTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    Path folder;

    private Path car;

    @BeforeEach
    void aCarOfWhichNothingIsKnown() {
        car = folder.resolve("car");
        pullproof.run("new", car, "--profile", "v8-distributor-order-a", "--name", "grey car");
    }

    private void tell(Object... facts) {
        Object[] arguments = new Object[facts.length + 2];
        arguments[0] = "set";
        arguments[1] = car;
        System.arraycopy(facts, 0, arguments, 2, facts.length);
        assertThat(pullproof.run(arguments).status()).isZero();
    }

    @Test
    void firstThePermissionOfTheOwnerIsAskedFor() {
        assertThat(pullproof.run("next", car).out()).startsWith("Say what the owner permits");
    }

    @Test
    void withTheEngineAllowedToRunBalanceComesFirstWithItsCautions() {
        tell("access=start-it", "runs=yes");
        assertThat(pullproof.run("next", car, "--json").out())
                .contains("\"action\": \"Balance, cylinder by cylinder\"")
                .contains("\"needs\": \"start-it\"")
                .contains("pacemaker")
                .contains("service manual");
    }

    @Test
    void aTickedStepShelvesItsPartsAndBlocksTheStart() {
        Outcome outcome = pullproof.run("steps", car, "--done", "a", "--done", "b", "--json");
        assertThat(outcome.out())
                .contains("\"part\": \"battery lead\"")
                .contains("\"what\": \"battery lead: still off\"");
    }

    @Test
    void aStepThatWaitsIsRefusedWithWhatItWaitsFor() {
        Outcome outcome = pullproof.run("steps", car, "--done", "c");
        assertThat(outcome.status()).isEqualTo(1);
        assertThat(outcome.err()).contains("Step c waits for b");
    }

    @Test
    void withoutPullsThereIsNoChangeToJudge() {
        Outcome outcome = pullproof.run("changes", car, "--json");
        assertThat(outcome.status()).isZero();
        assertThat(outcome.out()).contains("\"changes\": [ ]").doesNotContain("repeatabilityPercent");
    }

    @Test
    void whatIsSpentIsSetApart() {
        Outcome outcome = pullproof.run("worth", car, "--spend", "plugs=38USD", "--spend", "jets=18USD", "--json");
        assertThat(outcome.out()).contains("\"notCounted\": 56.0");
    }

    @Test
    void anEnteredOptionIsWeighedWithTheOthers() {
        Outcome outcome = pullproof.run("worth", car, "--option", "cold-air duct=60USD/85USD/120USD,2h,0/1/2%");
        assertThat(outcome.out().lines().filter(line -> line.startsWith("cold-air duct")))
                .singleElement()
                .asString()
                .contains("3\u00a0own hours");
    }

    @Test
    void anOptionOfAnotherShapeIsRefusedWithAnExample() {
        Outcome outcome = pullproof.run("worth", car, "--option", "duct=85USD");
        assertThat(outcome.status()).isEqualTo(1);
        assertThat(outcome.err()).contains("write \"cold-air duct=60USD/85USD/120USD,2h,0/1/2%\"");
    }
}
