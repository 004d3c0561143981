package org.pullproof.ui.parts;

import java.util.List;
import javafx.beans.property.StringProperty;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The head of a page that lies over the window: its title, what can be done with it, Close, and below them one sentence. */
public final class PageHead extends VBox {
    private final Label sentence = Labels.wrapped("", "answer-line");
    private final Runnable leave;

    /**
     * @param leave closes the page
     * @param beside what stands before Close
     */
    public PageHead(String title, Runnable leave, Node... beside) {
        super(4);
        this.leave = leave;
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Button close = Actions.plain("Close", "Esc");
        close.setOnAction(pressed -> leave.run());
        HBox line = new HBox(12, Labels.whole(title, "title"), space);
        line.getChildren().addAll(List.of(beside));
        line.getChildren().add(close);
        line.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(line, sentence);
        getStyleClass().add("values-head");
    }

    /** The sentence below the title. */
    public StringProperty sentenceProperty() {
        return sentence.textProperty();
    }

    /** Closes the page on Esc. A page whose list keeps Esc to itself takes this as a filter, else as a handler. */
    public void escape(KeyEvent key) {
        if (key.getCode() == KeyCode.ESCAPE) {
            leave.run();
            key.consume();
        }
    }
}
