package org.pullproof.ui.changes;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.ui.DynoFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class ChangesSheetTest {
    private final SessionViewModel session = SheetFixture.model(DynoFixture.open(), DynoFixture::appraise);
    private VBox page;

    @Start
    void open(Stage stage) {
        page = new VBox(ChangesPictures.sheet(session).node());
        Scene scene = new Scene(page, 828, 760);
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
    }

    @Test
    void aChangeIsTypedByKeysAlone(FxRobot robot) {
        robot.interact(() -> page.lookup("#change-setup").requestFocus());

        robot.write("timing 38")
                .type(KeyCode.TAB)
                .write("timing=38deg")
                .type(KeyCode.TAB)
                .write("12USD")
                .type(KeyCode.TAB)
                .write("to 38")
                .type(KeyCode.ENTER);

        assertThat(session.session().present().name()).isEqualTo("timing 38");
        assertThat(session.session().present().levels()).containsKey("timing");
        assertThat(session.session().changes()).last().satisfies(change -> {
            assertThat(change.what()).isEqualTo("to 38");
            assertThat(change.cost()).isPresent();
        });
    }

    @Test
    void aChangeWithoutANameIsRefusedWithASentence(FxRobot robot) {
        robot.clickOn("Change to it");

        assertThat(robot.lookup(".refusal").queryAs(Label.class).getText()).startsWith("Name the setup");
    }

    @Test
    void downMovesToTheNextRowOfTheLedger(FxRobot robot) {
        robot.interact(() -> page.lookup(".ledger-row").requestFocus());

        robot.type(KeyCode.DOWN);

        assertThat(page.lookup(".ledger-row").isFocused()).isFalse();
        assertThat(page.lookupAll(".ledger-row")).anyMatch(javafx.scene.Node::isFocused);
    }

    @Test
    void aPictureIsAttachedToTheSetupTheChosenChangeLedTo(FxRobot robot) {
        robot.interact(() -> page.lookup(".ledger-row").requestFocus());

        assertThat(page.lookupAll(".link"))
                .extracting(javafx.scene.Node::getAccessibleText)
                .anyMatch(words -> words != null && words.startsWith("Attach a picture of setup "));
    }
}
