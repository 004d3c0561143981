package org.pullproof.ui.parts;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.units.Sentence;

/** The head of a sheet: its question, the answer in one sentence, and the one thick rule. */
public final class AnswerHead extends VBox {
    private final Label question = new Label();
    private final SentenceFlow answer = new SentenceFlow("answer");

    /**
     * @param method shows how the figures of the sheet are made
     */
    public AnswerHead(Runnable method) {
        getStyleClass().add("answer-head");
        question.getStyleClass().add("question");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Button how = Actions.plain("How this is worked out", "Shift F1");
        how.getStyleClass().addAll("link", "how");
        // it has a key of its own; Tab begins at the sheet
        how.setFocusTraversable(false);
        how.setOnAction(pressed -> method.run());
        HBox line = new HBox(question, space, how);
        line.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(line, answer);
    }

    public void show(String asked, Sentence answered) {
        question.setText(asked);
        answer.show(answered);
    }
}
