package org.pullproof.start;

import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;

/** The least a JavaFX program can show: one window with one label. What the start of the program is held against. */
final class BareWindow {
    private BareWindow() {}

    public static void main(String[] arguments) {
        Platform.startup(() -> {
            Stage stage = new Stage();
            stage.setScene(new Scene(new Label("One label"), 1280, 800));
            stage.show();
        });
    }
}
