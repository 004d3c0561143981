package org.pullproof.ui.dynoday;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;

/** The last reading of the air beside the pulls: what was read, how old it is, the factor; and the way to read it again. */
final class AirCard extends VBox {
    private final DynoDayViewModel model;
    private final Button again = Actions.plain("Read the air", "A");

    AirCard(DynoDayViewModel model) {
        super(4);
        this.model = model;
        getStyleClass().add("air-card");
        again.setId("read-air");
        again.setOnAction(pressed -> model.readAir());
        show();
    }

    void show() {
        getChildren().setAll(Labels.section("Air at the intake", model.airAge()));
        if (model.airIsOld()) {
            getChildren().add(old());
        }
        model.latestAir()
                .ifPresent(reading ->
                        getChildren().add(Labels.wrapped(reading.air().words(), "caption")));
        getChildren().addAll(Labels.wrapped("factor " + model.latestFactorWords(), "strong"), again);
    }

    private static Label old() {
        return Labels.wrapped("Older than 20 min: read it again before the next pull.", "caption", "red");
    }
}
