package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.pullproof.ui.WindowRobot.until;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.NodeQueryUtils;

/** A car of one's own, from nothing to its worth, with the mouse; the keyboard only fills the fields that were clicked. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class MouseWalkTest {
    private Stage stage;
    private WalkedCar car;
    private final FxRobot robot = new FxRobot();
    private final WindowRobot person = new WindowRobot(robot);

    @Start
    void start(Stage shown) throws IOException {
        stage = shown;
        car = new WalkedCar(shown);
    }

    private static boolean isNamed(Node node, String name) {
        return name.equals(node.getAccessibleText());
    }

    /** Clicks words as soon as they can be seen. */
    private void click(String words) throws TimeoutException {
        until(() ->
                robot.lookup(words).match(NodeQueryUtils.isVisible()).tryQuery().isPresent());
        robot.clickOn(words);
    }

    private void fill(String field, String text) {
        robot.clickOn(field);
        robot.press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
        robot.write(text);
    }

    private void fillNamed(String name, String text) {
        robot.clickOn(robot.lookup((Node node) -> isNamed(node, name)).<Node>query());
        robot.press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
        robot.write(text);
    }

    private void sheet(String name) {
        robot.clickOn(robot.from(robot.lookup(".rail").queryAll()).lookup(name).<Node>query());
    }

    private void begin() throws TimeoutException {
        click("Begin with your own car");
        fillNamed("Name of the car", "barn find");
        fillNamed("Folder of the session", car.folder().toString());
        click("In-line 4, coil on plug, port injection");
        click("Begin");
        until(() -> stage.getTitle().startsWith("barn find"));
    }

    private void tellTheCar() throws TimeoutException {
        click("drive it");
        person.untilAnswer("\"drive it\" allowed");
        click("runs");
        person.untilAnswer("A running 2.0 L in-line 4");
    }

    private void readTheBalance() throws TimeoutException {
        sheet("Health");
        for (String drop : List.of("118", "121", "6", "115")) {
            fill("#entry-value", drop);
            click("Keep, next cylinder");
        }
        person.untilAnswer("Cylinder 3 lacks spark or mixture");
    }

    private void typeTheAir() throws TimeoutException {
        sheet("Dyno day");
        fill("#air-pressure", "29.10");
        fill("#air-temperature", "81");
        fill("#air-humidity", "55");
        click("Use this air");
        person.untilAnswer("take in the first pull");
    }

    private void pullTwice(int number, double level) throws TimeoutException {
        sheet("Dyno day");
        for (int each : new int[] {number, number + 1}) {
            car.layReady(each, level);
            click("Choose files");
            until(() -> car.pullsKept() == each && pullsShown() == each);
        }
    }

    /** The sheet is laid out anew with each pull: a click before that may miss. */
    private int pullsShown() {
        return robot.lookup((Node node) -> node instanceof TableView<?>).<TableView<?>>queryAll().stream()
                .mapToInt(table -> table.getItems().size())
                .max()
                .orElse(0);
    }

    private void changeTo(String setup, String what, String button) throws TimeoutException {
        sheet("Changes");
        fill("#change-setup", setup);
        fill("#change-what", what);
        click(button);
        until(() -> car.present().equals(setup));
    }

    @Test
    void aCarGoesFromNothingToItsWorthWithTheMouse() throws TimeoutException {
        begin();
        tellTheCar();
        readTheBalance();
        typeTheAir();
        pullTwice(1, 1);
        changeTo("timing 32", "total timing 26 to 32", "Change to it");
        pullTwice(3, 1.04);
        changeTo("as found", "back", "Go back to it");
        pullTwice(5, 1);
        sheet("Changes");
        person.untilAnswer("One gain. Total timing 26 to 32 made");
        sheet("Worth it");
        assertThat(person.answer()).isNotBlank();
        assertThat(car.report()).contains("barn find", "Cylinder 3 lacks spark or mixture", "One gain.");
    }
}
