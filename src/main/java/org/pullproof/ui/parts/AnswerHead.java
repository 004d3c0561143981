package org.pullproof.ui.parts;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.pullproof.units.Sentence;

/** The head of a sheet: its question, the answer in one sentence, and the one thick rule. */
public final class AnswerHead extends VBox {
    private final Label question = new Label();
    private final SentenceFlow answer = new SentenceFlow("answer");

    public AnswerHead() {
        getStyleClass().add("answer-head");
        question.getStyleClass().add("question");
        getChildren().setAll(question, answer);
    }

    public void show(String asked, Sentence answered) {
        question.setText(asked);
        answer.show(answered);
    }
}
