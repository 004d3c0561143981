package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.cli.CommandHarness.Outcome;
import org.pullproof.testing.Tools;

class ShareCommandTest {
    @TempDir
    private Path folder;

    private CommandHarness pullproof;
    private Path session;

    @BeforeEach
    void makeASession() {
        pullproof = new CommandHarness(Tools.with(folder.resolve("config")));
        session = folder.resolve("blue-saloon");
        pullproof.run("new", session, "--profile", "v6-odd-fire-90", "--name", "Blue saloon");
    }

    @Test
    void whatIsSharedCanBeOpenedByWhoGetsIt() {
        Path zip = folder.resolve("for-you.zip");
        assertThat(pullproof.run("share", session, "-o", zip).status()).isZero();

        Outcome opened = pullproof.run("open", zip);

        assertThat(opened.status()).isZero();
        assertThat(opened.out()).contains("Blue saloon");
        assertThat(folder.resolve("config/sessions/for-you/session.json")).exists();
        assertThat(opened.err()).contains("unpacked in " + folder.resolve("config/sessions/for-you"));
    }

    @Test
    void anotherEndingIsRefusedWithTheOneThatWouldBeRight() {
        Outcome refused = pullproof.run("share", session, "-o", folder.resolve("car.rar"));

        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("call it car.rar.zip");
        assertThat(folder.resolve("car.rar")).doesNotExist();
    }
}
