package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.Main;
import org.pullproof.app.Toolbox;
import org.pullproof.cli.CommandHarness.Outcome;
import org.pullproof.testing.Tools;

class OpenCommandTest {
    private final List<Optional<Path>> shown = new ArrayList<>();

    @TempDir
    private Path folder;

    private Toolbox tools;
    private CommandHarness withDisplay;
    private CommandHarness withoutDisplay;
    private Path demo;

    @BeforeEach
    void aProgramWithOneDemo() throws Exception {
        tools = Main.tools(folder.resolve("home"), folder.resolve("config"));
        withDisplay = new CommandHarness(tools, Optional.of((given, session) -> shown.add(session)));
        withoutDisplay = new CommandHarness(tools);
        demo = folder.resolve("home/demo-sessions/grey-coupe");
        tools.desk().create(demo, "grey coupé", Tools.profile("v8-distributor-order-a"));
    }

    private Path session(String name) throws Exception {
        Path session = folder.resolve(name);
        tools.desk().create(session, name, Tools.profile("i4-distributor"));
        return session;
    }

    @Test
    void theWindowOpensOnTheSessionNamed() throws Exception {
        Path mine = session("mine");
        assertThat(withDisplay.run("open", mine).status()).isZero();
        assertThat(shown).containsExactly(Optional.of(mine));
    }

    @Test
    void onTheFirstStartTheWindowOpensOnNoSession() {
        withDisplay.run();
        assertThat(shown).containsExactly(Optional.empty());
    }

    @Test
    void withoutASessionNamedTheLastOneOpens() throws Exception {
        Path mine = session("mine");
        withDisplay.run("open", mine);
        withDisplay.run();
        assertThat(shown).last().isEqualTo(Optional.of(mine.toAbsolutePath()));
    }

    @Test
    void aLastSessionThatIsGoneIsPassedOver() throws Exception {
        Path older = session("older");
        Path gone = session("gone");
        withDisplay.run("open", older);
        withDisplay.run("open", gone);
        Files.delete(gone.resolve("session.json"));
        withDisplay.run("open");
        assertThat(shown).last().isEqualTo(Optional.of(older.toAbsolutePath()));
    }

    @Test
    void aDemoOpensAsACopy() {
        withDisplay.run("open", demo);
        Path copy = folder.resolve("config/demo-sessions/grey-coupe");
        assertThat(shown).containsExactly(Optional.of(copy));
        assertThat(copy.resolve("session.json")).exists();
    }

    @Test
    void aDamagedSessionIsSaidBeforeAnyWindowOpens() throws Exception {
        Path mine = session("mine");
        Files.writeString(mine.resolve("session.json"), "{");
        Outcome refused = withDisplay.run("open", mine);
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("session.json, line 1", "cut off");
        assertThat(shown).isEmpty();
    }

    @Test
    void withoutADisplayTheReportOfThatSessionIsPrinted() throws Exception {
        Outcome told = withoutDisplay.run("open", session("mine"));
        assertThat(told.status()).isZero();
        assertThat(told.err()).contains("There is no display here");
        assertThat(told.out()).contains("mine", "Is this engine sound?");
    }

    @Test
    void withoutADisplayTheFirstStartPrintsTheReportOfTheDemo() {
        Outcome told = withoutDisplay.run();
        assertThat(told.err()).contains("grey-coupe");
        assertThat(told.out()).contains("grey coupé");
    }

    @Test
    void damagedPreferencesAreSaidAndStopNothing() throws Exception {
        Files.createDirectories(folder.resolve("config"));
        Files.writeString(folder.resolve("config/preferences.json"), "{");
        Outcome told = withDisplay.run("open", session("mine"));
        assertThat(told.status()).isZero();
        assertThat(told.err()).contains("preferences.json, line 1", "begin anew");
        assertThat(shown).hasSize(1);
    }

    @Test
    void preferencesThatCannotBeWrittenAreSaidAndStopNothing() throws Exception {
        Files.writeString(folder.resolve("config"), "a file where the folder should be");
        Outcome told = withDisplay.run("open", session("mine"));
        assertThat(told.status()).isZero();
        assertThat(told.err()).contains("the preferences could not be written");
        assertThat(shown).hasSize(1);
    }
}
