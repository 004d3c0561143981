package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.app.Toolbox;
import org.pullproof.cli.CommandHarness.Outcome;
import org.pullproof.testing.FileTree;
import org.pullproof.testing.Tools;

class VersionsCommandTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path folder;

    private Path session;

    @BeforeEach
    void aVan() {
        session = folder.resolve("van");
        pullproof.run("new", session, "--profile", "i4-distributor", "--name", "Blue van");
    }

    private String newest() throws Exception {
        return FileTree.names(session.resolve("kept")).get(0);
    }

    @Test
    void aNewSessionHasNone() {
        assertThat(pullproof.run("versions", session).out()).startsWith("Nothing is kept yet");
    }

    @Test
    void eachIsListedWithWhatWasDoneSince() throws Exception {
        pullproof.run("set", session, "runs=dies");
        assertThat(pullproof.run("versions", session).out()).contains(newest(), "facts of the car changed");
    }

    @Test
    void backPutsItInThePlaceOfThePresent() throws Exception {
        String before = Files.readString(session.resolve("session.json"));
        pullproof.run("set", session, "runs=dies");

        Outcome back = pullproof.run("versions", session, "--back", newest());

        assertThat(back.status()).isZero();
        assertThat(session.resolve("session.json")).hasContent(before);
        assertThat(FileTree.names(session.resolve("kept"))).hasSize(2);
    }

    @Test
    void aNameThatIsNotKeptIsWrongInput() {
        Outcome refused = pullproof.run("versions", session, "--back", "yesterday");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("no version \"yesterday\" is kept; none is");
    }

    @Test
    void asJson() throws Exception {
        pullproof.run("set", session, "runs=dies");
        assertThat(pullproof.run("versions", session, "--json").out())
                .contains("\"name\": \"" + newest() + "\"", "\"readable\": true");
    }

    @Test
    void whileTheSessionIsOpenElsewhereACommandIsRefusedAndChangesNothing() throws Exception {
        String before = Files.readString(session.resolve("session.json"));
        Toolbox window = Tools.ofTheProgram();
        window.desk().openToEdit(session);

        Outcome refused = pullproof.run("set", session, "runs=dies");

        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err())
                .contains("another Pullproof has this session open for editing; close it there, then do this again.");
        assertThat(session.resolve("session.json")).hasContent(before);
        window.desk().letGo();
        assertThat(pullproof.run("set", session, "runs=dies").status()).isZero();
    }
}
