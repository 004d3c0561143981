package org.pullproof.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.advice.Stage;
import org.pullproof.app.OpenSession;
import org.pullproof.session.Edit;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.parts.Fonts;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Search and the guide are opened, used and left by keys alone, on sheets that hold one button and one field. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class PagesOverTheWindowTest {
    private final OpenSession open = UiFixture.after(
            UiFixture.open(), new Edit("Record", now -> now.withReadings(List.of(SheetFixture.compression(6, 92)))));
    private final SessionViewModel model = SheetFixture.model(open, UiFixture::appraise);
    private Scene scene;

    private record PlainSheet(Stage stage, Node node) implements Sheet {}

    private static Sheet sheet(Stage stage) {
        Button button = new Button("On " + stage.words());
        button.setId("button-" + stage.words());
        TextField field = new TextField();
        field.setId("field-" + stage.words());
        return new PlainSheet(stage, new VBox(button, field));
    }

    @Start
    void open(javafx.stage.Stage stage) {
        Fonts.load();
        MainView view = new MainView(model, PagesOverTheWindowTest::sheet, UiFixture.shellActs());
        Keys keys = new Keys(view, model);
        scene = new Scene(view, 1280, 800);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, keys::press);
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
        view.focusSheet();
    }

    private String keyboardIn() {
        return String.valueOf(scene.getFocusOwner().getId());
    }

    private void control(FxRobot robot, KeyCode code) {
        robot.press(KeyCode.CONTROL).type(code).release(KeyCode.CONTROL);
    }

    @Test
    void enterGoesToTheSheetWhereWhatWasFoundStands(FxRobot robot) {
        control(robot, KeyCode.F);
        robot.write("dry 92").type(KeyCode.ENTER);

        assertThat(model.stageProperty().get()).isEqualTo(Stage.HEALTH);
        assertThat(keyboardIn()).isEqualTo("button-Health");
    }

    @Test
    void arrowsChooseAmongWhatWasFound(FxRobot robot) {
        control(robot, KeyCode.F);
        robot.write("go to").type(KeyCode.DOWN, 3).type(KeyCode.UP).type(KeyCode.ENTER);

        assertThat(model.stageProperty().get()).isEqualTo(Stage.TUNE_UP);
    }

    @Test
    void escapeGivesTheKeyboardBackToWhereItWas(FxRobot robot) {
        robot.interact(() -> scene.lookup("#field-Car").requestFocus());
        control(robot, KeyCode.F);
        assertThat(keyboardIn()).isEqualTo("search-field");

        robot.type(KeyCode.ESCAPE);

        assertThat(keyboardIn()).isEqualTo("field-Car");
        assertThat(robot.lookup("#search-field").tryQuery()).isEmpty();
    }

    @Test
    void aSlashOpensSearchButIsNeverTypedIntoIt(FxRobot robot) {
        robot.type(KeyCode.SLASH).write("x");

        assertThat(robot.lookup("#search-field").<TextInputControl>query().getText())
                .isEqualTo("x");
    }

    @Test
    void aSlashInAFieldIsALetter(FxRobot robot) {
        robot.interact(() -> scene.lookup("#field-Car").requestFocus());
        robot.write("1/2");

        assertThat(((TextField) scene.lookup("#field-Car")).getText()).isEqualTo("1/2");
    }

    @Test
    void helpOpensTheChapterOfTheSheetAndEscapeGoesBack(FxRobot robot) {
        control(robot, KeyCode.DIGIT3);
        robot.type(KeyCode.F1);
        assertThat(robot.lookup(".guide-title").<Label>query().getText()).isEqualTo("Tune-up");
        robot.type(KeyCode.DOWN);
        assertThat(robot.lookup(".guide-title").<Label>query().getText()).isEqualTo("Dyno day");

        robot.type(KeyCode.ESCAPE);

        assertThat(robot.lookup(".guide-title").tryQuery()).isEmpty();
        assertThat(keyboardIn()).isEqualTo("button-Tune-up");
    }

    @Test
    void pageKeysScrollTheChapter(FxRobot robot) {
        control(robot, KeyCode.DIGIT2);
        robot.type(KeyCode.F1);
        ScrollPane scroll = robot.lookup(".guide-page > .scroll-pane").query();
        assertThat(scroll.getVvalue()).isZero();

        robot.type(KeyCode.PAGE_DOWN);

        assertThat(scroll.getVvalue()).isPositive();
    }

    @Test
    void searchOpensTheGuideWhereItsHeadingStands(FxRobot robot) {
        control(robot, KeyCode.F);
        robot.write("the tdc guide, f3").type(KeyCode.ENTER);

        assertThat(robot.lookup(".guide-title").<Label>query().getText()).isEqualTo("Health");
        ScrollPane scroll = robot.lookup(".guide-page > .scroll-pane").query();
        assertThat(scroll.getVvalue()).isPositive();
    }

    @Test
    void anActionIsDoneAndOneThatCannotBeSaysWhy(FxRobot robot) {
        control(robot, KeyCode.F);
        robot.write("nothing to redo");
        assertThat(robot.lookup("#found").queryListView().getItems()).hasSize(2);
        robot.type(KeyCode.ESCAPE);

        control(robot, KeyCode.F);
        robot.write("night").type(KeyCode.ENTER);
        assertThat(model.look().nightProperty().get()).isTrue();
    }
}
