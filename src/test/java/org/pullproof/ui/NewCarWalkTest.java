package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.pullproof.ui.WindowRobot.until;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A car of one's own, from nothing to its worth, by keys alone; only the pull files are handed in by a stand-in. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class NewCarWalkTest {
    private Stage stage;
    private WalkedCar car;

    @Start
    void start(Stage shown) throws IOException {
        stage = shown;
        car = new WalkedCar(shown);
    }

    private void begin(WindowRobot person) throws TimeoutException {
        person.control(KeyCode.N);
        person.type("barn find");
        person.key(KeyCode.TAB, KeyCode.TAB);
        person.control(KeyCode.A);
        person.type(car.folder().toString());
        person.back();
        person.key(KeyCode.DOWN, KeyCode.DOWN, KeyCode.DOWN, KeyCode.DOWN, KeyCode.DOWN, KeyCode.DOWN, KeyCode.ENTER);
        until(() -> stage.getTitle().startsWith("barn find"));
    }

    private static void tellTheCar(WindowRobot person) {
        person.key(KeyCode.DOWN, KeyCode.DOWN, KeyCode.DOWN, KeyCode.DOWN);
        person.untilAnswer("\"drive it\" allowed");
        person.key(KeyCode.TAB, KeyCode.SPACE);
        person.untilAnswer("A running 2.0 L in-line 4");
    }

    private static void readTheBalance(WindowRobot person) {
        person.control(KeyCode.ENTER);
        for (String drop : List.of("118", "121", "6", "115")) {
            person.type(drop);
            person.key(KeyCode.ENTER);
        }
        person.untilAnswer("Cylinder 3 lacks spark or mixture");
    }

    private static void typeTheAir(WindowRobot person) {
        person.control(KeyCode.DIGIT4);
        person.type("29.10");
        person.key(KeyCode.TAB);
        person.type("81");
        person.key(KeyCode.TAB);
        person.type("55");
        person.key(KeyCode.ENTER);
        person.untilAnswer("take in the first pull");
    }

    private void pullTwice(WindowRobot person, int number, double level) throws TimeoutException {
        for (int each : new int[] {number, number + 1}) {
            car.layReady(each, level);
            person.control(KeyCode.DIGIT4);
            person.control(KeyCode.I);
            until(() -> car.pullsKept() == each);
        }
    }

    private static void changeTo(WindowRobot person, String setup, String what) {
        person.type(setup);
        person.key(KeyCode.TAB, KeyCode.TAB, KeyCode.TAB);
        person.type(what);
        person.key(KeyCode.ENTER);
    }

    @Test
    void aCarGoesFromNothingToItsWorthByKeysAlone(FxRobot robot) throws TimeoutException {
        WindowRobot person = new WindowRobot(robot);
        begin(person);
        tellTheCar(person);
        readTheBalance(person);
        typeTheAir(person);
        pullTwice(person, 1, 1);
        person.control(KeyCode.DIGIT5);
        // the choice of what stands below the ledger is one stop
        person.key(KeyCode.TAB);
        changeTo(person, "timing 32", "total timing 26 to 32");
        until(() -> car.present().equals("timing 32"));
        pullTwice(person, 3, 1.04);
        person.control(KeyCode.DIGIT5);
        // the ledger of changes comes first now
        person.key(KeyCode.TAB, KeyCode.TAB);
        changeTo(person, "as found", "back");
        until(() -> car.present().equals("as found"));
        pullTwice(person, 5, 1);
        person.control(KeyCode.DIGIT5);
        person.untilAnswer("One gain. Total timing 26 to 32 made");
        assertThat(car.kept().changes()).hasSize(2);
        person.control(KeyCode.DIGIT6);
        assertThat(person.answer()).isNotBlank();
        assertThat(car.report()).contains("barn find", "Cylinder 3 lacks spark or mixture", "One gain.");
    }
}
