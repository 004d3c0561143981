package org.pullproof.ui.parts;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Cautions that stand at an act, each behind a red pointer. */
public final class Cautions extends VBox {
    public Cautions() {
        getStyleClass().add("act-cautions");
    }

    public void show(List<String> sentences) {
        getChildren().setAll(sentences.stream().map(Cautions::line).toList());
    }

    private static HBox line(String sentence) {
        Label words = Labels.wrapped(sentence, "caution");
        HBox.setHgrow(words, Priority.ALWAYS);
        return new HBox(Mark.CAUTION.node(), words);
    }
}
