package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.files.SessionFolder;
import org.pullproof.testing.FileTree;
import org.pullproof.testing.Tools;
import org.pullproof.ui.shell.SessionViewModel;

class CopySaverTest {
    private final Toolbox tools = Tools.ofTheProgram();

    @TempDir
    private Path place;

    private OpenSession open;
    private SessionViewModel model;

    @BeforeEach
    void anOpenCar() throws Exception {
        tools.desk().create(place.resolve("van"), "van", Tools.profile("i4-distributor"));
        open = tools.setFacts().set(tools.desk().openToEdit(place.resolve("van")), Map.of("runs", "dies"));
        model = SheetFixture.model(open, UiFixture::appraise);
    }

    @Test
    void theCopyHasANameOfItsOwnAndIsWorkedOnFromNow() throws Exception {
        Files.createDirectories(place.resolve("van-copy"));
        new CopySaver(tools.desk()).into(model, place);
        Path copy = place.resolve("van-copy-2");
        assertThat(model.open().folder()).isEqualTo(copy);
        assertThat(model.problemProperty().get()).isEqualTo("You work on the copy now: " + copy + ".");
        assertThat(new SessionFolder(copy).read()).isEqualTo(open.session());
        assertThat(FileTree.names(copy)).containsExactly("kept", "session.json", "session.lock");
    }

    @Test
    void theWorkIsSavedWhereTheOldFolderIsGone() throws Exception {
        FileTree.delete(place.resolve("van"));
        model.act(before -> tools.setFacts().set(before, Map.of("runs", "no")));
        assertThat(model.problemProperty().get()).contains("the session is no longer here", "Ctrl Shift S");
        new CopySaver(tools.desk()).into(model, place);
        assertThat(model.problemProperty().get()).contains("the folder is not there, so the copy is without its files");
        assertThat(model.session().car().runs().orElseThrow().toString()).isEqualToIgnoringCase("no");
    }

    @Test
    void whatCouldNotBeWrittenBeforeIsDoneInTheCopy() throws Exception {
        FileTree.delete(place.resolve("van"));
        model.act(before -> tools.setFacts().set(before, Map.of("runs", "no")));
        assertThat(model.notWrittenProperty().get()).isEqualTo(1);

        new CopySaver(tools.desk()).into(model, place);

        assertThat(model.notWrittenProperty().get()).isZero();
        assertThat(new SessionFolder(place.resolve("van-copy"))
                        .read()
                        .car()
                        .runs()
                        .orElseThrow()
                        .toString())
                .isEqualToIgnoringCase("no");
        assertThat(model.problemProperty().get()).startsWith("You work on the copy now");
    }

    @Test
    void undoGoesOnInTheCopy() throws Exception {
        new CopySaver(tools.desk()).into(model, place);
        assertThat(tools.desk().undo(model.open()).session().car().runs()).isEmpty();
        assertThat(new SessionFolder(place.resolve("van")).read()).isEqualTo(open.session());
    }
}
