package org.pullproof.ui.shell;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The dark line above the foot: what was just done, with Undo, or what could not be done. */
final class SaidOnce extends HBox {
    private final Label words = new Label();
    private final Button undo = new Button("Undo");
    private final Button close = new Button("Close");
    private final SessionViewModel model;

    SaidOnce(SessionViewModel model) {
        this.model = model;
        getStyleClass().add("said-once");
        words.setWrapText(true);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        undo.setOnAction(pressed -> model.undo());
        close.setOnAction(pressed -> model.forgetSaid());
        getChildren().setAll(words, undo, close);
        model.saidProperty().addListener((of, before, after) -> show());
        model.problemProperty().addListener((of, before, after) -> show());
        managedProperty().bind(visibleProperty());
        show();
    }

    private void show() {
        String problem = model.problemProperty().get();
        String said = model.saidProperty().get();
        boolean isProblem = !problem.isEmpty();
        words.setText(isProblem ? problem : said);
        undo.setVisible(!isProblem);
        undo.setManaged(!isProblem);
        setVisible(isProblem || !said.isEmpty());
    }
}
