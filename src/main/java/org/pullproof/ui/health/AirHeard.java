package org.pullproof.ui.health;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;

/** Where air is heard: several places, or none of them; nothing chosen means nobody listened. */
final class AirHeard extends HBox {
    private static final String NONE = "none";

    private final ReadingEntry entry;
    private final List<ToggleButton> places;

    AirHeard(ReadingEntry entry) {
        this.entry = entry;
        this.places = EntryColumn.AIR.choices().stream().map(this::place).toList();
        getStyleClass().add("choice");
        getChildren().setAll(places);
    }

    private ToggleButton place(String words) {
        ToggleButton button = new ToggleButton(words);
        button.setAccessibleText("Air heard at " + words);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(pressed -> pressed(button));
        return button;
    }

    private void pressed(ToggleButton pressed) {
        boolean none = pressed.getText().equals(NONE);
        places.stream()
                .filter(other -> other != pressed && (none || other.getText().equals(NONE)))
                .forEach(other -> other.setSelected(false));
        entry.put(EntryColumn.AIR, chosen());
    }

    private String chosen() {
        return places.stream()
                .filter(ToggleButton::isSelected)
                .map(ToggleButton::getText)
                .collect(Collectors.joining(";"));
    }

    void clear() {
        places.forEach(place -> place.setSelected(false));
    }
}
