package org.pullproof.ui.parts;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** Words on a sheet, set in a style of the look. */
public final class Labels {
    private Labels() {}

    /** Words that never shorten: names, figures, captions. */
    public static Label whole(String words, String... styleClasses) {
        Label label = new Label(words);
        label.getStyleClass().addAll(styleClasses);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    /** A sentence that wraps at the width it is given. */
    public static Label wrapped(String words, String... styleClasses) {
        Label label = new Label(words);
        label.getStyleClass().addAll(styleClasses);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** The title of a section with a caption beside it. */
    public static HBox section(String title, String caption) {
        HBox line = new HBox(8, whole(title, "section"), whole(caption, "caption"));
        line.setAlignment(Pos.BASELINE_LEFT);
        return line;
    }
}
