package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.cli.CommandHarness.Outcome;

class NewSetCheckTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path folder;

    private Path made() {
        Path session = folder.resolve("grey-coupe");
        pullproof.run("new", session, "--profile", "v8-distributor-order-a", "--name", "grey coupé");
        return session;
    }

    private String document(Path session) throws Exception {
        return Files.readString(session.resolve("session.json"));
    }

    @Test
    void aNewSessionIsAFolderWithADocumentThatNamesItsProfile() throws Exception {
        assertThat(document(made())).contains("\"name\": \"grey coupé\"", "v8-distributor-order-a");
    }

    @Test
    void newTellsWhatItMadeAsJson() {
        Outcome told =
                pullproof.run("new", folder.resolve("a"), "--profile", "i4-distributor", "--name", "a", "--json");
        assertThat(told.out()).contains("\"profile\"").startsWith("{");
        assertThat(told.status()).isZero();
    }

    @Test
    void newRefusesAFolderThatHoldsASession() throws Exception {
        Path session = made();
        String before = document(session);
        Outcome refused = pullproof.run("new", session, "--profile", "i4-distributor", "--name", "other");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains(session.toString(), "a session lies here already");
        assertThat(document(session)).isEqualTo(before);
    }

    @Test
    void anUnknownProfileIsRefusedWithTheNamesThereAre() {
        Outcome refused = pullproof.run("new", folder.resolve("a"), "--profile", "v9", "--name", "a");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).startsWith("v9: ").contains("v8-distributor-order-a");
        assertThat(folder.resolve("a")).doesNotExist();
    }

    @Test
    void setTellsFacts() throws Exception {
        Path session = made();
        Outcome told = pullproof.run("set", session, "access=own-it", "elevation=800ft", "standard=iso-1585");
        assertThat(told.status()).isZero();
        assertThat(document(session)).contains("own-it", "800ft", "iso-1585");
    }

    @Test
    void oneWrongValueLeavesAllUnset() throws Exception {
        Path session = made();
        String before = document(session);
        Outcome refused = pullproof.run("set", session, "runs=yes", "elevation=800");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("elevation", "has no unit", "800ft");
        assertThat(document(session)).isEqualTo(before);
    }

    @Test
    void anUnknownNameIsRefusedWithTheNamesThereAre() {
        Outcome refused = pullproof.run("set", made(), "colour=grey");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("colour", "budget", "standard");
    }

    @Test
    void anEmptyValueForgets() throws Exception {
        Path session = made();
        pullproof.run("set", session, "budget=1400USD");
        pullproof.run("set", session, "budget=");
        assertThat(document(session)).doesNotContain("budget");
    }

    @Test
    void aWordWithoutEqualsIsWrongUsage() {
        assertThat(pullproof.run("set", made(), "runs").status()).isEqualTo(2);
    }

    @Test
    void checkFindsNothingInAFreshSession() {
        Outcome checked = pullproof.run("check", made(), "--json");
        assertThat(checked.status()).isZero();
        assertThat(checked.out().replace(" ", "")).contains("\"problems\":[]");
    }

    @Test
    void checkOfAFolderWithoutASessionNamesTheFolder() {
        Outcome checked = pullproof.run("check", folder);
        assertThat(checked.status()).isEqualTo(1);
        assertThat(checked.err()).startsWith(folder + ": here lies no session");
    }

    @Test
    void anUnknownCommandIsWrongUsageSaidInAFewLines() {
        Outcome refused = pullproof.run("profile");
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("'profile'", "pullproof profiles", "See \"pullproof --help\".");
        assertThat(refused.err().lines()).hasSizeLessThanOrEqualTo(3);
    }

    @Test
    void aFactIsNamedOnceWhereItsValueIsWrong() {
        assertThat(pullproof.run("set", made(), "hard-pulls=maybe").err().strip())
                .isEqualTo("set: hard-pulls: yes or no, was \"maybe\".");
    }

    @Test
    void helpIsDone() {
        Outcome help = pullproof.run("set", "--help");
        assertThat(help.status()).isZero();
        assertThat(help.out()).contains("NAME=VALUE", "1400USD");
    }
}
