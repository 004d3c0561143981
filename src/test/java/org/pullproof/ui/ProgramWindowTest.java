package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.advice.Cautions;
import org.pullproof.app.Toolbox;
import org.pullproof.files.TradeFiles;
import org.pullproof.testing.Tools;
import org.pullproof.ui.parts.Fonts;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Walks the main path in the real window by keys alone. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class ProgramWindowTest {
    private Stage stage;
    private Toolbox tools;
    private Path config;

    @Start
    void start(Stage shown) throws IOException {
        stage = shown;
        config = Files.createTempDirectory("pullproof-window");
        tools = Tools.with(config);
        Fonts.load();
        TradeFiles trade = new TradeFiles();
        new ProgramWindow(
                        tools,
                        new Cautions(trade.cautions(), trade.lastCaution()),
                        stage,
                        List::of,
                        Clock.system(ZoneOffset.UTC))
                .show(Optional.empty());
    }

    private static void until(BooleanSupplier holds) throws TimeoutException {
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, holds::getAsBoolean);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static String answer(FxRobot robot) {
        return robot.lookup(".answer").queryAll().stream()
                .flatMap(flow -> ((javafx.scene.layout.Pane) flow).getChildren().stream())
                .map(text -> ((javafx.scene.text.Text) text).getText())
                .reduce("", String::concat);
    }

    private void openDemo(FxRobot robot) throws TimeoutException {
        robot.press(KeyCode.ENTER).release(KeyCode.ENTER);
        until(() -> stage.getTitle().startsWith("Grey coup"));
    }

    private static void control(FxRobot robot, KeyCode key) {
        robot.press(KeyCode.CONTROL, key).release(key, KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void enterOnTheTitleSheetOpensACopyOfTheDemo(FxRobot robot) throws TimeoutException {
        openDemo(robot);
        assertThat(config.resolve("demo-sessions/grey-coupe/session.json")).exists();
    }

    @Test
    void controlAndADigitShowEveryAnswer(FxRobot robot) throws TimeoutException {
        openDemo(robot);
        control(robot, KeyCode.DIGIT2);
        assertThat(answer(robot)).startsWith("Sound.");
        control(robot, KeyCode.DIGIT3);
        assertThat(answer(robot)).contains("steps are done");
        control(robot, KeyCode.DIGIT4);
        assertThat(answer(robot)).contains("at the wheels");
        control(robot, KeyCode.DIGIT5);
        assertThat(answer(robot)).contains("one loss");
        control(robot, KeyCode.DIGIT6);
        until(() -> answer(robot).startsWith("Stop spending"));
    }

    @Test
    void spaceTakesATickAwayAndUndoBringsItBack(FxRobot robot) throws TimeoutException {
        openDemo(robot);
        control(robot, KeyCode.DIGIT3);
        robot.press(KeyCode.END).release(KeyCode.END);
        robot.press(KeyCode.SPACE).release(KeyCode.SPACE);
        until(() -> answer(robot).startsWith("Nineteen of twenty"));
        control(robot, KeyCode.Z);
        until(() -> answer(robot).startsWith("All twenty"));
    }

    @Test
    void aRunOfCompressionIsTypedAtTheFenderByKeysAloneAndIsOnTheDisk(FxRobot robot) throws Exception {
        openDemo(robot);
        Path folder = config.resolve("demo-sessions/grey-coupe");
        int before = tools.desk().open(folder).session().readings().size();
        control(robot, KeyCode.DIGIT2);
        robot.type(KeyCode.F2);
        robot.write("7").type(KeyCode.ENTER);
        robot.write("158").type(KeyCode.ENTER);
        robot.write("612").type(KeyCode.ENTER);
        robot.type(KeyCode.LEFT).write("162").type(KeyCode.ENTER);
        robot.write("155").type(KeyCode.ENTER);
        robot.write("92").type(KeyCode.ENTER);
        robot.write("r94").type(KeyCode.ENTER);

        until(() -> readings(folder) == before + 5);
        robot.type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(answer(robot)).isNotEmpty();
    }

    private int readings(Path folder) {
        try {
            return tools.desk().open(folder).session().readings().size();
        } catch (org.pullproof.files.BadFileException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @Test
    void theKeptVersionsAreOpenedByAKeyAndLeftByEscape(FxRobot robot) throws TimeoutException {
        openDemo(robot);
        control(robot, KeyCode.H);
        until(() -> robot.lookup("#kept-versions").tryQuery().isPresent());
        robot.type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#kept-versions").tryQuery()).isEmpty();
    }

    @Test
    void whatSomethingElseWroteMeanwhileIsReadAgainByAKey(FxRobot robot) throws Exception {
        openDemo(robot);
        Path document = config.resolve("demo-sessions/grey-coupe/session.json");
        Files.writeString(document, Files.readString(document).replace("\"runs\": \"yes\"", "\"runs\": \"dies\""));
        control(robot, KeyCode.R);
        until(() -> robot.lookup(".button").queryAllAs(Button.class).stream()
                .anyMatch(button -> "Undo: Read again from the disk".equals(button.getAccessibleText())));
    }

    @Test
    void theWindowHoldsItsSession(FxRobot robot) throws Exception {
        openDemo(robot);
        Path folder = config.resolve("demo-sessions/grey-coupe");
        assertThat(Tools.ofTheProgram().desk().openToEdit(folder).problems())
                .singleElement()
                .asString()
                .contains("another Pullproof has this session open");
        control(robot, KeyCode.N);
        Toolbox other = Tools.ofTheProgram();
        until(() -> isFree(other, folder));
        other.desk().letGo();
    }

    private static boolean isFree(Toolbox other, Path folder) {
        try {
            return other.desk().openToEdit(folder).problems().isEmpty();
        } catch (org.pullproof.files.BadFileException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @Test
    void theTdcGuideIsTurnedByEnterAndLeftByEscape(FxRobot robot) throws TimeoutException {
        openDemo(robot);
        control(robot, KeyCode.DIGIT2);

        robot.type(KeyCode.F3).type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(answer(robot)).startsWith("Cylinder 8 is at TDC. For 4, turn the crank 90°");
        robot.type(KeyCode.LEFT);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(answer(robot)).startsWith("Cylinder 1 is at TDC.");
        robot.type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(answer(robot)).startsWith("Sound.");
    }

    @Test
    void ownCarIsBegunByKeysAlone(FxRobot robot) throws TimeoutException {
        control(robot, KeyCode.N);
        robot.write("red car");
        Path folder = config.resolve("red-car");
        robot.press(KeyCode.TAB).release(KeyCode.TAB);
        robot.press(KeyCode.TAB).release(KeyCode.TAB);
        control(robot, KeyCode.A);
        robot.write(folder.toString());
        robot.press(KeyCode.ENTER).release(KeyCode.ENTER);
        until(() -> stage.getTitle().startsWith("red car"));
        assertThat(folder.resolve("session.json")).exists();
        assertThat(robot.lookup(".next .title").<Labeled>query().getText()).isEqualTo("Say what the owner permits");
    }

    @Test
    void ownCarCanBeBegunFromEverySheet(FxRobot robot) throws TimeoutException {
        openDemo(robot);
        for (KeyCode sheet : List.of(
                KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT5, KeyCode.DIGIT6)) {
            control(robot, sheet);
            control(robot, KeyCode.N);
            assertThat(stage.getTitle()).as("after %s", sheet).isEqualTo("Pullproof");
            robot.type(KeyCode.ESCAPE);
            until(() -> stage.getTitle().startsWith("Grey coup"));
        }
    }

    @Test
    void whoTurnsBackFromANewCarIsInTheSessionOfBefore(FxRobot robot) throws TimeoutException {
        openDemo(robot);
        control(robot, KeyCode.N);
        assertThat(stage.getTitle()).isEqualTo("Pullproof");

        robot.press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
        until(() -> stage.getTitle().startsWith("Grey coup"));
    }
}
