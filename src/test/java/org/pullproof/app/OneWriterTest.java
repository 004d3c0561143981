package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.files.BadFileException;
import org.pullproof.testing.FileTree;
import org.pullproof.testing.Tools;

class OneWriterTest {
    private final Toolbox first = Tools.ofTheProgram();
    private final Toolbox second = Tools.ofTheProgram();

    @TempDir
    private Path folder;

    @BeforeEach
    void aSession() throws Exception {
        first.desk().create(folder, "car", Tools.profile("i4-distributor"));
    }

    private OpenSession edited(Toolbox tools, OpenSession open, String runs) throws BadFileException {
        return tools.setFacts().set(open, Map.of("runs", runs));
    }

    @Test
    void theSecondMayLookAndIsToldWhyItMayNotEdit() throws Exception {
        first.desk().openToEdit(folder);
        OpenSession looking = second.desk().openToEdit(folder);
        assertThat(looking.session().car().name()).isEqualTo("car");
        assertThat(looking.problems())
                .singleElement()
                .asString()
                .contains("open to be looked at", "another Pullproof has this session open", "close it there");
        String before = Files.readString(folder.resolve("session.json"));
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> edited(second, looking, "no"))
                .withMessageContaining("another Pullproof has this session open");
        assertThat(folder.resolve("session.json")).hasContent(before);
    }

    @Test
    void whatIsHeldIsFreeAgainOnceItIsLetGo() throws Exception {
        first.desk().openToEdit(folder);
        OpenSession looking = second.desk().openToEdit(folder);
        first.desk().letGo();
        assertThat(edited(second, looking, "no").session().car().runs()).isPresent();
    }

    @Test
    void openingAnotherSessionLetsTheOneBeforeGo() throws Exception {
        Path other = folder.resolve("other");
        first.desk().create(other, "other", Tools.profile("i4-distributor"));
        first.desk().openToEdit(folder);
        first.desk().openToEdit(other);
        assertThat(second.desk().openToEdit(folder).problems()).isEmpty();
        assertThat(second.desk().openToEdit(other).problems()).isNotEmpty();
    }

    @Test
    void anEditMadeElsewhereMeanwhileIsNotWrittenOver() throws Exception {
        OpenSession stale = second.desk().open(folder);
        edited(first, first.desk().open(folder), "dies");
        String before = Files.readString(folder.resolve("session.json"));
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> edited(second, stale, "no"))
                .withMessageContaining("something else changed the session on disk")
                .withMessageContaining("Read it again");
        assertThat(folder.resolve("session.json")).hasContent(before);
    }

    @Test
    void whoTakesTheLockClearsAwayWhatAKilledProgramLeft() throws Exception {
        Files.createDirectories(folder.resolve("pulls"));
        Files.writeString(folder.resolve("session.json.0a1b2c3d.part"), "{");
        Files.writeString(folder.resolve("pulls/run.csv.ffffffff.part"), "rpm");
        Files.writeString(folder.resolve("mine.part"), "not ours");
        edited(first, first.desk().open(folder), "dies");
        assertThat(FileTree.names(folder))
                .containsExactly("kept", "mine.part", "pulls", "session.json", "session.lock");
        assertThat(FileTree.names(folder.resolve("pulls"))).isEmpty();
    }

    @Test
    void aSessionIsReadWithoutLeavingATrace() throws Exception {
        FileTree.delete(folder);
        Files.createDirectories(folder);
        first.desk().create(folder, "car", Tools.profile("i4-distributor"));
        Files.delete(folder.resolve("session.lock"));
        second.desk().open(folder);
        assertThat(FileTree.names(folder)).containsExactly("session.json");
    }
}
