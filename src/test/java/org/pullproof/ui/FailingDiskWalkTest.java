package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.pullproof.ui.WindowRobot.until;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.app.Toolbox;
import org.pullproof.testing.Tools;
import org.pullproof.ui.parts.Fonts;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A folder that goes away while its session is open in the real window. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class FailingDiskWalkTest {
    private Stage stage;
    private Path car;
    private Path unplugged;

    @Start
    void start(Stage shown) throws Exception {
        stage = shown;
        Path place = Files.createTempDirectory("pullproof-unplugged");
        car = place.resolve("red-car");
        unplugged = place.resolve("unplugged");
        Toolbox tools = Tools.with(place.resolve("config"));
        tools.desk().create(car, "Red car", tools.profiles().find("i4-distributor"));
        Fonts.load();
        new ProgramWindow(tools, SheetFixture.cautions(), stage, List::of, Clock.system(ZoneOffset.UTC))
                .show(Optional.of(car));
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(stage::hide);
    }

    private static boolean isSeen(FxRobot robot, String id) {
        return robot.lookup(id).tryQuery().filter(Node::isVisible).isPresent();
    }

    private int readings() throws Exception {
        return Tools.ofTheProgram().desk().open(car).session().readings().size();
    }

    /** Types a balance reading of cylinder 1 where the folder is gone. */
    private void aReadingThatCannotBeWritten(FxRobot robot) throws Exception {
        until(() -> stage.getTitle().startsWith("Red car"));
        WindowRobot keys = new WindowRobot(robot);
        keys.control(KeyCode.DIGIT2);
        Files.move(car, unplugged);
        keys.type("158");
        keys.key(KeyCode.ENTER);
        until(() -> isSeen(robot, "#try-again"));
    }

    @Test
    void whatWasTypedWaitsUntilTheFolderIsBack(FxRobot robot) throws Exception {
        aReadingThatCannotBeWritten(robot);
        assertThat(robot.lookup(".said-once .label").queryLabeled().getText())
                .contains("the session is no longer here", "save a copy elsewhere");
        assertThat(isSeen(robot, "#save-copy")).isTrue();

        Files.move(unplugged, car);
        robot.interact(() -> robot.lookup("#try-again").queryAs(Button.class).fire());

        until(() -> !isSeen(robot, "#try-again"));
        assertThat(readings()).isEqualTo(1);
    }

    @Test
    void theWindowDoesNotCloseUnaskedOverWhatIsOnlyThere(FxRobot robot) throws Exception {
        aReadingThatCannotBeWritten(robot);
        robot.interact(() -> stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
        assertThat(stage.isShowing()).isTrue();
        assertThat(robot.lookup(".said-once .label").queryLabeled().getText())
                .contains("1 edit is not saved and would be lost");
    }
}
