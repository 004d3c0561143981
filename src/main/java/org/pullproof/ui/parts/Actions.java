package org.pullproof.ui.parts;

import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Buttons of the look: the one blue one and all others, each with its key beside the words. */
public final class Actions {
    private Actions() {}

    /**
     * @param key the key that does the same, or empty
     */
    public static Button plain(String words, String key) {
        Button button = new Button(words);
        if (!key.isEmpty()) {
            button.setGraphic(key(key));
            button.setContentDisplay(ContentDisplay.RIGHT);
            button.setGraphicTextGap(8);
        }
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }

    /** The one blue button, as wide as its place. */
    public static Button go(String words, String key) {
        Label text = new Label(words);
        text.getStyleClass().add("go-words");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox line = new HBox(text, space, key(key));
        line.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        Button button = new Button("", line);
        button.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        button.getStyleClass().add("go");
        button.setMaxWidth(Double.MAX_VALUE);
        button.setAccessibleText(words);
        line.prefWidthProperty().bind(button.widthProperty().subtract(26));
        return button;
    }

    private static Label key(String key) {
        Label label = new Label(key);
        label.getStyleClass().add("key");
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }
}
