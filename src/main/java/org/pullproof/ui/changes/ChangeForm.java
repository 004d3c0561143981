package org.pullproof.ui.changes;

import java.util.List;
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
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.units.Money;

/** Brings the engine into another setup: a new one, or back to one of before. */
final class ChangeForm extends VBox {
    private final ChangesViewModel model;
    private final ComboBox<String> setup = new ComboBox<>();
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
        cost.field().setId("change-cost");
        cost.field().setPromptText("18USD");
        cost.field().setPrefColumnCount(8);
        cost.field().setOnAction(entered -> change());
        change.setOnAction(pressed -> change());
        Cautions care = new Cautions();
        care.show(cautions);
        HBox title = new HBox(8, Labels.whole("Change one thing", "section"), present);
        title.setAlignment(javafx.geometry.Pos.BASELINE_LEFT);
        HBox first = new HBox(10, labelled("Setup after the change", setup), labelled("Cost", cost));
        getChildren().setAll(title, first, labelled("What is done", what), change, care);
    }

    private static Node labelled(String words, Node input) {
        Label label = Labels.whole(words, "caption");
        label.setLabelFor(input);
        return new VBox(label, input);
    }

    private void change() {
        getChildren().remove(refusal);
        if (!cost.take()) {
            return;
        }
        try {
            model.change(setup.getEditor().getText(), what.getText(), cost.value());
            setup.setValue("");
            setup.getEditor().clear();
            what.clear();
            cost.show("");
        } catch (IllegalArgumentException refused) {
            refusal.setText(String.valueOf(refused.getMessage()));
            getChildren().add(2, refusal);
        }
    }

    void show() {
        String typed = Optional.ofNullable(setup.getEditor().getText()).orElse("");
        setup.setItems(FXCollections.observableList(model.otherSetups()));
        setup.getEditor().setText(typed);
        present.setText("the engine is in " + model.model().session().present().name() + " now");
    }
}
