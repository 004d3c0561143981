package org.pullproof.ui.changes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.pullproof.app.TypedLevels;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;

/** Brings the engine into another setup: a new one, or back to one of before. */
final class ChangeForm extends VBox {
    private final ChangesViewModel model;
    private final ComboBox<String> setup = new ComboBox<>();
    private final CheckedField<Map<String, Quantity>> level = new CheckedField<>("Level", TypedLevels::read);
    private final TextField what = new TextField();
    private final CheckedField<Money> cost = new CheckedField<>("Cost", Money::parse);
    private final Label refusal = Labels.wrapped("", "refusal");
    private final Button change = Actions.plain("Change to it", "Enter");
    private final Label present = Labels.whole("", "caption");

    ChangeForm(ChangesViewModel model, List<String> cautions) {
        this.model = model;
        getStyleClass().add("change-form");
        setup.setId("change-setup");
        setup.setEditable(true);
        setup.setAccessibleText("Setup after the change");
        setup.getEditor().setPromptText("new name, or one of before");
        setup.getEditor()
                .textProperty()
                .addListener((ObservableValue<? extends String> of, String before, String name) ->
                        change.setText(model.isKnown(name) ? "Go back to it" : "Change to it"));
        what.setId("change-what");
        what.setPromptText("total timing 26° to 32°");
        what.setOnAction(entered -> change());
        level.field().setId("change-level");
        level.field().setPromptText("timing=32deg");
        level.field().setPrefColumnCount(9);
        level.field().setOnAction(entered -> change());
        cost.field().setId("change-cost");
        cost.field().setPromptText("18USD");
        cost.field().setPrefColumnCount(6);
        cost.field().setOnAction(entered -> change());
        change.setOnAction(pressed -> change());
        Cautions care = new Cautions();
        care.show(cautions);
        HBox first = new HBox(
                8,
                labelled("Setup after the change", setup),
                labelled("Level, if numeric", level),
                labelled("Cost", cost));
        getChildren().setAll(present, first, labelled("What is done", what), change, care);
    }

    private static Node labelled(String words, Node input) {
        Label label = Labels.whole(words, "caption");
        label.setLabelFor(input);
        return new VBox(label, input);
    }

    private void change() {
        getChildren().remove(refusal);
        if (!cost.take() || !level.take()) {
            return;
        }
        try {
            model.change(
                    setup.getEditor().getText(), what.getText(), level.value().orElse(Map.of()), cost.value());
            setup.setValue("");
            setup.getEditor().clear();
            what.clear();
            cost.show("");
            level.show("");
        } catch (IllegalArgumentException refused) {
            refusal.setText(String.valueOf(refused.getMessage()));
            getChildren().add(2, refusal);
        }
    }

    void show() {
        String typed = Optional.ofNullable(setup.getEditor().getText()).orElse("");
        setup.setItems(FXCollections.observableList(model.otherSetups()));
        setup.getEditor().setText(typed);
        present.setText("The engine is in " + model.model().session().present().name() + " now. Change one thing.");
    }
}
