package org.pullproof.ui.parts;

import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.pullproof.units.Sentence;

/** A sentence with its bold words; wraps at the width it is given. */
public final class SentenceFlow extends TextFlow {

    /**
     * @param styleClass how it is set: {@code answer}, {@code second}, …
     */
    public SentenceFlow(String... styleClass) {
        getStyleClass().add("sentence");
        getStyleClass().addAll(styleClass);
    }

    public static SentenceFlow of(Sentence sentence, String... styleClass) {
        SentenceFlow flow = new SentenceFlow(styleClass);
        flow.show(sentence);
        return flow;
    }

    /** Replaces the sentence. */
    public void show(Sentence sentence) {
        getChildren().setAll(sentence.parts().stream().map(SentenceFlow::words).toList());
        setAccessibleText(sentence.plain());
    }

    private static Text words(Sentence.Part part) {
        Text text = new Text(part.words());
        text.getStyleClass().add(part.bold() ? "bold" : "words");
        return text;
    }
}
