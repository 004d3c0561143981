package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.advice.Cautions;
import org.pullproof.app.Toolbox;
import org.pullproof.files.Preferences;
import org.pullproof.files.TradeFiles;
import org.pullproof.testing.Tools;
import org.pullproof.ui.parts.Fonts;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What the program keeps of one window for the next. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class ProgramMemoryTest {
    private Path config;
    private Toolbox tools;
    private Stage stage;

    @Start
    void start(Stage first) throws Exception {
        config = Files.createTempDirectory("pullproof-memory");
        tools = Tools.with(config);
        Fonts.load();
        stage = first;
        show(Optional.empty());
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(stage::hide);
    }

    private void show(Optional<Path> session) {
        TradeFiles trade = new TradeFiles();
        Cautions cautions = new Cautions(trade.cautions(), trade.lastCaution());
        new ProgramWindow(tools, cautions, stage, List::of, Clock.system(ZoneOffset.UTC)).show(session);
    }

    /** Closes the window and starts the program once more. */
    private void again(FxRobot robot, Optional<Path> session) {
        robot.interact(() -> {
            stage.hide();
            stage = new Stage();
            show(session);
        });
    }

    private static void until(BooleanSupplier holds) throws Exception {
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, holds::getAsBoolean);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Path openDemo(FxRobot robot) throws Exception {
        robot.type(KeyCode.ENTER);
        until(() -> stage.getTitle().startsWith("Grey coup"));
        return config.resolve("demo-sessions/grey-coupe");
    }

    private static void control(FxRobot robot, KeyCode code) {
        robot.press(KeyCode.CONTROL).type(code).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Preferences kept() {
        return tools.preferences().read().preferences();
    }

    @Test
    void sheetLightSizeAndPlaceAreThereAgain(FxRobot robot) throws Exception {
        Path demo = openDemo(robot);
        control(robot, KeyCode.DIGIT3);
        control(robot, KeyCode.L);
        robot.interact(() -> {
            stage.setX(30);
            stage.setY(20);
            stage.setWidth(1100);
            stage.setHeight(720);
        });

        again(robot, Optional.of(demo));
        until(() -> stage.getTitle().startsWith("Grey coup"));

        assertThat(robot.lookup(".question").queryAllAs(javafx.scene.control.Label.class))
                .extracting(label -> label.getText())
                .contains("Is it in tune, and may it be started?");
        assertThat(stage.getScene().getRoot().getStyleClass()).contains("night");
        assertThat(stage.getWidth()).isEqualTo(1100);
        assertThat(stage.getHeight()).isEqualTo(720);
        assertThat(stage.getX()).isEqualTo(30);
        assertThat(stage.getY()).isEqualTo(20);
    }

    @Test
    void hintsOnTheDemoAreShutForGood(FxRobot robot) throws Exception {
        Path demo = openDemo(robot);
        assertThat(robot.lookup(".demo-hints .hint").queryAll()).hasSize(3);
        robot.interact(() -> robot.lookup("#shut-hints").queryAs(Button.class).fire());
        assertThat(kept().hintsShut()).isTrue();

        again(robot, Optional.of(demo));
        until(() -> stage.getTitle().startsWith("Grey coup"));

        assertThat(robot.lookup(".demo-hints").tryQuery()).isEmpty();
    }

    @Test
    void ownCarHasNoHints(FxRobot robot) throws Exception {
        Path car = config.resolve("red-car");
        tools.desk().create(car, "Red car", tools.profiles().find("i4-distributor"));
        again(robot, Optional.of(car));
        until(() -> stage.getTitle().startsWith("Red car"));

        assertThat(robot.lookup(".demo-hints").tryQuery()).isEmpty();
    }

    @Test
    void theTitleSheetNamesWhatWasOpenedAndSaysWhatIsGone(FxRobot robot) throws Exception {
        Path car = config.resolve("red-car");
        tools.desk().create(car, "Red car", tools.profiles().find("i4-distributor"));
        tools.preferences()
                .write(Preferences.atFirst().withOpened(config.resolve("gone")).withOpened(car));
        again(robot, Optional.empty());

        List<String> lines = robot.lookup(".recent").queryAllAs(Button.class).stream()
                .map(Button::getAccessibleText)
                .toList();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).startsWith("red-car in " + config + ", changed ");
        assertThat(lines.get(1)).isEqualTo("gone in " + config + ", not there any more");

        robot.interact(() -> robot.lookup(".recent")
                .queryAllAs(Button.class)
                .iterator()
                .next()
                .fire());
        until(() -> stage.getTitle().startsWith("Red car"));
    }

    @Test
    void aSharedZipIsUnpackedBesideTheSessionsAndThatIsSaid(FxRobot robot) throws Exception {
        Path demo = openDemo(robot);
        Path zip = config.resolve("handed-on.zip");
        tools.share().share(demo, zip);

        again(robot, Optional.of(zip));
        until(() -> stage.getTitle().startsWith("Grey coup"));

        Path unpacked = config.resolve("sessions/handed-on");
        assertThat(unpacked.resolve("session.json")).hasSameBinaryContentAs(demo.resolve("session.json"));
        assertThat(robot.lookup(".said-once .label").queryLabeled().getText()).contains("unpacked in " + unpacked);
    }

    @Test
    void aZipThatCannotBeOpenedLeavesTheTitleSheetWithTheReason(FxRobot robot) throws Exception {
        Path broken = Files.writeString(config.resolve("broken.zip"), "no zip");
        again(robot, Optional.of(broken));

        until(() -> robot.lookup(".red").queryAllAs(javafx.scene.control.Label.class).stream()
                .anyMatch(label -> label.getText().contains("no zip file, or it is damaged")));
        assertThat(stage.getTitle()).isEqualTo("Pullproof");
    }
}
