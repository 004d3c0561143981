package org.pullproof.ui.shell;

import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/**
 * The dark line above the foot: what was just done, with Undo, or what could not be done. It stays, with the ways out, while edits wait
 * that could not be written.
 */
final class SaidOnce extends HBox {
    private final Label words = new Label();
    private final Button undo = new Button("Undo");
    private final Button close = new Button("Close");
    private final Button again = new Button("Try again");
    private final Button copy = new Button("Save a copy…");
    private final Button drop = new Button("Leave undone");
    private final SessionViewModel model;

    /**
     * @param saveCopy saves the session elsewhere and goes on there
     */
    SaidOnce(SessionViewModel model, Runnable saveCopy) {
        this.model = model;
        getStyleClass().add("said-once");
        words.setWrapText(true);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        again.setId("try-again");
        copy.setId("save-copy");
        undo.setOnAction(pressed -> model.undo());
        close.setOnAction(pressed -> model.forgetSaid());
        again.setOnAction(pressed -> model.tryAgain());
        copy.setOnAction(pressed -> saveCopy.run());
        drop.setOnAction(pressed -> model.leaveUndone());
        getChildren().setAll(words, undo, again, copy, drop, close);
        Stream.of(undo, again, copy, drop, close).forEach(button -> {
            button.setMinWidth(USE_PREF_SIZE);
            button.managedProperty().bind(button.visibleProperty());
        });
        model.saidProperty().addListener((of, before, after) -> show());
        model.problemProperty().addListener((of, before, after) -> show());
        model.notWrittenProperty().addListener((of, before, after) -> show());
        managedProperty().bind(visibleProperty());
        show();
    }

    private void show() {
        String problem = model.problemProperty().get();
        String said = model.saidProperty().get();
        boolean waits = model.notWrittenProperty().get() > 0;
        boolean isProblem = !problem.isEmpty();
        words.setText(isProblem ? problem : waits ? model.savedProperty().get() + "." : said);
        undo.setVisible(!isProblem && !waits);
        Stream.of(again, copy, drop).forEach(button -> button.setVisible(waits));
        close.setVisible(!waits);
        setVisible(isProblem || waits || !said.isEmpty());
    }
}
