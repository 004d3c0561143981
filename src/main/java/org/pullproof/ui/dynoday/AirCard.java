package org.pullproof.ui.dynoday;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.units.Figures;
import org.pullproof.weather.AirReading;

/** The last reading of the air beside the pulls: what was read, how old it is, the factor; and the way to read it again. */
final class AirCard extends VBox {
    private final AirViewModel model;
    private final Button again = Actions.plain("Read the air", "A");

    AirCard(AirViewModel model) {
        super(4);
        this.model = model;
        getStyleClass().add("air-card");
        again.setId("read-air");
        again.setOnAction(pressed -> model.read());
        show();
    }

    void show() {
        getChildren().setAll(Labels.section("Air at the intake", model.age()));
        if (model.isOld()) {
            getChildren().add(old());
        }
        model.latest()
                .ifPresent(reading ->
                        getChildren().add(Labels.wrapped(reading.air().words(), "caption")));
        getChildren().addAll(Labels.wrapped("factor " + model.latestFactorWords(), "strong"), again);
    }

    private static Label old() {
        return Labels.wrapped(
                "Older than " + AirReading.SERVES.toMinutes() + Figures.NO_BREAK_SPACE
                        + "min: read it again before the next pull.",
                "caption",
                "red");
    }
}
