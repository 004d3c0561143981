package org.pullproof.start;

import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.pullproof.Main;

/** Opens a session in the window, looks at some of its sheets by their keys, and closes the window: the program ends by itself. */
public final class Walk {
    private Walk() {}

    /**
     * @param arguments the digits of the sheets, as {@code 123456}, and the session's folder
     */
    public static void main(String[] arguments) {
        Thread walker = new Thread(() -> walk(arguments[0]), "walker");
        walker.setDaemon(true);
        walker.start();
        Main.main(new String[] {"open", arguments[1]});
    }

    private static void walk(String sheets) {
        Scene scene = Screen.await("sheet-frame");
        Screen.awaitFrame(scene);
        for (int place = 0; place < sheets.length(); place++) {
            press(scene, KeyCode.getKeyCode(sheets.substring(place, place + 1)));
            Screen.awaitFrame(scene);
        }
        Platform.runLater(() -> scene.getWindow().hide());
    }

    private static void press(Scene scene, KeyCode key) {
        Platform.runLater(() ->
                Event.fireEvent(scene, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", key, false, true, false, false)));
    }
}
