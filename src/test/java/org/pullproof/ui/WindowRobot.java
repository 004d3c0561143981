package org.pullproof.ui;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import javafx.scene.text.Text;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** A person at the keys of the window, who waits until the window has answered. */
final class WindowRobot {
    private final FxRobot robot;

    WindowRobot(FxRobot robot) {
        this.robot = robot;
    }

    static void until(BooleanSupplier holds) throws TimeoutException {
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, holds::getAsBoolean);
        WaitForAsyncUtils.waitForFxEvents();
    }

    void key(KeyCode... keys) {
        for (KeyCode key : keys) {
            robot.press(key).release(key);
            WaitForAsyncUtils.waitForFxEvents();
        }
    }

    void control(KeyCode key) {
        robot.press(KeyCode.CONTROL, key).release(key, KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Gives the keyboard back to the control before. */
    void back() {
        robot.press(KeyCode.SHIFT, KeyCode.TAB).release(KeyCode.TAB, KeyCode.SHIFT);
        WaitForAsyncUtils.waitForFxEvents();
    }

    void type(String text) {
        robot.write(text);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** The sentence at the head of the sheet. */
    String answer() {
        return robot.lookup(".answer").queryAll().stream()
                .flatMap(flow -> ((Pane) flow).getChildren().stream())
                .map(text -> ((Text) text).getText())
                .reduce("", String::concat)
                .replace('\u00a0', ' ');
    }

    void untilAnswer(String part) {
        try {
            until(() -> answer().contains(part));
        } catch (TimeoutException never) {
            throw new AssertionError("the answer stayed \"" + answer() + "\", not \"" + part + "\"", never);
        }
    }
}
