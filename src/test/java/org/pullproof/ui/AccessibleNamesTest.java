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
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.advice.Cautions;
import org.pullproof.files.TradeFiles;
import org.pullproof.testing.Tools;
import org.pullproof.ui.parts.Fonts;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Whatever the keyboard can come to says its name to those who do not see it: WCAG 2.1, success criterion 4.1.2 (name, role, value).
 * The name is the accessible text, the words on it, or those of a label for it.
 */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class AccessibleNamesTest {
    private javafx.stage.Stage stage;

    @Start
    void start(javafx.stage.Stage shown) throws Exception {
        stage = shown;
        Path config = Files.createTempDirectory("pullproof-names");
        Fonts.load();
        TradeFiles trade = new TradeFiles();
        Cautions cautions = new Cautions(trade.cautions(), trade.lastCaution());
        new ProgramWindow(Tools.with(config), cautions, stage, List::of, Clock.system(ZoneOffset.UTC))
                .show(Optional.empty());
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(stage::hide);
    }

    private static void until(BooleanSupplier holds) throws Exception {
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, holds::getAsBoolean);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void control(FxRobot robot, KeyCode code) {
        robot.press(KeyCode.CONTROL).type(code).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void openDemo(FxRobot robot, javafx.stage.Stage stage) throws Exception {
        robot.type(KeyCode.ENTER);
        until(() -> stage.getTitle().startsWith("Grey coup"));
    }

    private void everythingHasAName(String where) {
        Parent root = stage.getScene().getRoot();
        assertThat(reached(root)).as(where).isNotEmpty();
        assertThat(nameless(root)).as(where).isEmpty();
    }

    /** What the keyboard can come to; the parts of a control belong to it. */
    private static Stream<Node> reached(Node node) {
        if (!node.isVisible()) {
            return Stream.empty();
        }
        Stream<Node> self = node.isFocusTraversable() ? Stream.of(node) : Stream.empty();
        boolean control = node.isFocusTraversable() && node instanceof Control;
        return node instanceof Parent parent && !control
                ? Stream.concat(self, parent.getChildrenUnmodifiable().stream().flatMap(AccessibleNamesTest::reached))
                : self;
    }

    private static List<Node> nameless(Parent root) {
        List<Label> labels = labels(root).toList();
        return reached(root).filter(node -> name(node, labels).isBlank()).toList();
    }

    private static Stream<Label> labels(Node node) {
        Stream<Label> self = node instanceof Label label ? Stream.of(label) : Stream.empty();
        return node instanceof Parent parent
                ? Stream.concat(self, parent.getChildrenUnmodifiable().stream().flatMap(AccessibleNamesTest::labels))
                : self;
    }

    private static String name(Node node, List<Label> labels) {
        return Stream.of(
                        Optional.ofNullable(node.getAccessibleText()),
                        node instanceof Labeled words ? Optional.ofNullable(words.getText()) : Optional.<String>empty(),
                        labels.stream()
                                .filter(label -> label.getLabelFor() == node)
                                .map(Label::getText)
                                .findFirst())
                .flatMap(Optional::stream)
                .reduce("", String::concat);
    }

    /** Or the tests below would pass on anything. */
    @Test
    void whatHasNoNameIsFound(FxRobot robot) {
        robot.interact(() -> {
            TextField named = new TextField();
            Label label = new Label("Gap");
            label.setLabelFor(named);
            TextField nameless = new TextField();
            assertThat(nameless(new VBox(label, named, nameless, new Button("Keep"), new Button())))
                    .hasSize(2)
                    .contains(nameless);
        });
    }

    @Test
    void onTheTitleSheetAndTheFormOfANewCar(FxRobot robot) {
        everythingHasAName("title sheet");
        control(robot, KeyCode.N);
        everythingHasAName("new car");
    }

    @Test
    void onEverySheet(FxRobot robot) throws Exception {
        openDemo(robot, stage);
        for (KeyCode sheet : List.of(
                KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT5, KeyCode.DIGIT6)) {
            control(robot, sheet);
            everythingHasAName("sheet of " + sheet);
        }
    }

    @Test
    void onEveryPageOverTheSheets(FxRobot robot) throws Exception {
        openDemo(robot, stage);
        control(robot, KeyCode.F);
        everythingHasAName("search");
        robot.type(KeyCode.ESCAPE);
        robot.type(KeyCode.F1);
        everythingHasAName("guide");
        robot.type(KeyCode.ESCAPE);
        control(robot, KeyCode.J);
        everythingHasAName("values");
        robot.type(KeyCode.ESCAPE);
        control(robot, KeyCode.DIGIT2);
        robot.type(KeyCode.F3);
        everythingHasAName("TDC guide");
        robot.type(KeyCode.ESCAPE);
        robot.type(KeyCode.F2);
        everythingHasAName("fender mode");
    }
}
