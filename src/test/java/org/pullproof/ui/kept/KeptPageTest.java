package org.pullproof.ui.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.app.ImmediateRunner;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.files.SessionFolder;
import org.pullproof.testing.Tools;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.Snapshots;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class KeptPageTest {
    private final Toolbox tools = Tools.ofTheProgram();
    private Path folder;
    private SessionViewModel session;
    private KeptPage page;
    private boolean left;

    @Start
    void open(Stage stage) throws Exception {
        folder = Files.createTempDirectory("pullproof-kept");
        tools.desk().create(folder, "car", Tools.profile("i4-distributor"));
        tools.setFacts().set(tools.desk().open(folder), Map.of("runs", "dies"));
        OpenSession open = tools.setFacts().set(tools.desk().open(folder), Map.of("runs", "no"));
        session = SheetFixture.model(open, UiFixture::appraise);
        page = new KeptPage(new KeptViewModel(session, tools.keptSittings(), new ImmediateRunner()), () -> left = true);
        Scene scene = new Scene(page, 1280, 800);
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
    }

    @Test
    void theOldestIsChosenAndGoneBackToByKeys(FxRobot robot) throws Exception {
        robot.interact(page::requestFocus);
        robot.type(KeyCode.END, KeyCode.ENTER);
        assertThat(new SessionFolder(folder).read().car().runs()).isEmpty();
        assertThat(session.undoNameProperty().get()).startsWith("Go back to ");
        assertThat(robot.lookup("#kept-versions").queryListView().getItems()).hasSize(3);
    }

    @Test
    void eachRowSaysWhenAndWhatWasDoneSince(FxRobot robot) throws Exception {
        assertThat(robot.lookup(".label").queryAllAs(javafx.scene.control.Label.class))
                .extracting(javafx.scene.control.Label::getText)
                .contains("since then: facts of the car changed");
        Snapshots.write(page.getScene(), "kept-versions");
    }

    @Test
    void withNothingChosenThereIsNoWayBack(FxRobot robot) {
        Node back = robot.lookup("#back-to-version").query();
        assertThat(back.isDisabled()).isFalse();
        robot.interact(() -> robot.lookup("#kept-versions")
                .queryListView()
                .getSelectionModel()
                .clearSelection());
        assertThat(back.isDisabled()).isTrue();
    }

    @Test
    void escapeLeaves(FxRobot robot) {
        robot.interact(page::requestFocus);
        robot.type(KeyCode.ESCAPE);
        assertThat(left).isTrue();
    }
}
