package org.pullproof.ui.worth;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.drawing.FlipStrip;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.worth.AnswerRows;
import org.pullproof.worth.decision.answer.Flip;

/** What would have to be otherwise for another option to be best. */
final class FlipsView extends VBox {
    private static final double WIDTH = 128;
    private static final double HEIGHT = 32;
    private static final int MOST = 8;

    FlipsView() {
        getStyleClass().add("flips");
    }

    void show(AnswerRows rows) {
        getChildren().setAll(Labels.section("What would flip it", "dot: as it stands; blue: the answer changes"));
        rows.answer().flips().stream().limit(MOST).forEach(flip -> getChildren().add(row(rows, flip)));
        if (rows.answer().flips().isEmpty()) {
            getChildren().add(Labels.wrapped("No single input within sensible bounds changes the choice.", "second"));
        }
    }

    private static Node row(AnswerRows rows, Flip flip) {
        String now = rows.value(flip, flip.now());
        String at = rows.value(flip, flip.at());
        String title = rows.input(flip) + ": " + now + "; from " + at + ": " + flip.becomes();
        DrawingView strip =
                new DrawingView((width, height) -> FlipStrip.of(flip.now(), flip.at(), now, at, title, width, height));
        strip.setMinSize(WIDTH, HEIGHT);
        strip.setPrefSize(WIDTH, HEIGHT);
        Label input = Labels.wrapped(rows.input(flip));
        HBox.setHgrow(input, Priority.ALWAYS);
        input.setMaxWidth(Double.MAX_VALUE);
        Label then = Labels.wrapped(flip.becomes(), "second");
        then.getStyleClass().add("flip-then");
        HBox line = new HBox(8, input, strip, then);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("row");
        return line;
    }
}
