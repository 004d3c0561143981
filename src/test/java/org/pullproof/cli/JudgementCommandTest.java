package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.cli.CommandHarness.Outcome;

class JudgementCommandTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path folder;

    private Path session;

    @BeforeEach
    void aCarWithOneWeakDrop() throws IOException {
        session = folder.resolve("van");
        pullproof.run("new", session, "--profile", "i4-distributor", "--name", "Blue van");
        Path table = folder.resolve("balance.csv");
        Files.writeString(
                table, "test,cylinder,value\nbalance,1,100rpm\nbalance,2,101rpm\nbalance,3,99rpm\nbalance,4,78rpm\n");
        pullproof.run("add-readings", session, table);
    }

    private String healthOfCylinderFour() {
        return pullproof
                .run("health", session)
                .out()
                .lines()
                .filter(line -> line.strip().startsWith("4 "))
                .findFirst()
                .orElse("");
    }

    @Test
    void anEditedLimitChangesWhatIsSaidAndAnEmptyOneBringsItBack() {
        String before = healthOfCylinderFour();

        Outcome edited = pullproof.run("judgement", session, "health.weakDrop=50");

        assertThat(edited.status()).isZero();
        assertThat(healthOfCylinderFour()).isNotEqualTo(before);
        pullproof.run("judgement", session, "health.weakDrop=");
        assertThat(healthOfCylinderFour()).isEqualTo(before);
    }

    @Test
    void jsonListsEveryNumberWithItsOwnValueAndTheEditedOne() {
        assertThat(pullproof
                        .run("judgement", session, "faults.priors.faultyCylinders=0.3", "--json")
                        .out())
                .contains("\"name\": \"faults.priors.faultyCylinders\",\n    \"value\": 0.3,\n    \"own\": 0.45");
    }

    @Test
    void oneWrongValueAndNoneIsKept() {
        Outcome refused = pullproof.run("judgement", session, "health.weakDrop=12", "health.suspectLeak=20");

        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("health.suspectLeak", "not judgement (published)");
        assertThat(session.resolve("session.json")).content().doesNotContain("health.weakDrop");
    }

    @Test
    void resetGoesBackThroughout() {
        pullproof.run("judgement", session, "health.weakDrop=12", "health.weakScatter=2");

        assertThat(pullproof.run("judgement", session, "--reset").status()).isZero();
        assertThat(folder.resolve("van/session.json")).content().doesNotContain("weakScatter");
    }

    @Test
    void aSessionEditedByHandIsRefusedWithTheNameOfTheValue() throws IOException {
        pullproof.run("judgement", session, "health.weakDrop=12");
        Path file = session.resolve("session.json");
        Files.writeString(
                file, Files.readString(file).replace("\"health.weakDrop\": 12.0", "\"health.weakDrop\": 1200"));

        Outcome refused = pullproof.run("health", session);

        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("health.weakDrop", "too far from the program's own 15.0");
    }

    @Test
    void theReportNamesTheEditedValues() {
        pullproof.run("judgement", session, "health.weakDrop=12");

        assertThat(pullproof.run("report", session).out())
                .contains("Judged by values of this session's own")
                .contains("health.weakDrop = 12");
    }
}
