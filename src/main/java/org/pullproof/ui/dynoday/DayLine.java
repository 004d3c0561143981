package org.pullproof.ui.dynoday;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Mark;

/** One line on whether the next pull may begin, with the way to the page that says why. */
final class DayLine extends HBox {
    private final DayViewModel model;
    private final Label words = Labels.wrapped("");

    DayLine(DayViewModel model) {
        this.model = model;
        getStyleClass().add("day-line");
        Button open = Actions.plain("Gate and run list", "G");
        open.setId("day-open");
        open.setOnAction(pressed -> model.shownProperty().set(true));
        getChildren().setAll(Mark.POSTS.node(), words, open);
    }

    void show() {
        words.setText(model.standing());
    }
}
