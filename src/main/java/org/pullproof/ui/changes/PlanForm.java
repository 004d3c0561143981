package org.pullproof.ui.changes;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** Plans the pulls of a day for a gain that is to be seen. */
final class PlanForm extends VBox {
    private final ChangesViewModel model;
    private final CheckedField<Quantity> gain =
            new CheckedField<>("Gain to be seen", text -> Quantity.parse(text, Unit.PERCENT));
    private final CheckedField<Integer> settings = new CheckedField<>("Setups, the base counted", PlanForm::whole);
    private final CheckedField<Integer> minutes = new CheckedField<>("Minutes there are", PlanForm::whole);
    private final Label answer = Labels.wrapped("");

    PlanForm(ChangesViewModel model) {
        this.model = model;
        getStyleClass().add("plan-form");
        gain.field().setId("plan-gain");
        gain.field().setPrefColumnCount(5);
        settings.field().setId("plan-settings");
        settings.field().setPrefColumnCount(4);
        minutes.field().setId("plan-minutes");
        minutes.field().setPrefColumnCount(5);
        minutes.field().setPromptText("no limit");
        gain.show("1.5%");
        settings.show("2");
        answer.setId("plan-answer");
        Button plan = Actions.plain("Plan it", "Enter");
        plan.setOnAction(pressed -> plan());
        gain.field().setOnAction(entered -> plan());
        settings.field().setOnAction(entered -> plan());
        minutes.field().setOnAction(entered -> plan());
        HBox fields = new HBox(
                10,
                labelled("Gain to be seen", gain),
                labelled("Setups with base", settings),
                labelled("Minutes", minutes));
        getChildren().setAll(fields, plan, answer);
    }

    private static Node labelled(String words, CheckedField<?> input) {
        Label label = Labels.whole(words, "caption");
        label.setLabelFor(input.field());
        return new VBox(label, input);
    }

    private static Integer whole(String text) {
        try {
            return Integer.valueOf(text.strip());
        } catch (NumberFormatException wrong) {
            throw new IllegalArgumentException("\"" + text + "\" is not a whole number.", wrong);
        }
    }

    private void plan() {
        if (gain.take() && settings.take() && minutes.take()) {
            answer.setText(model.plan(gain.value(), settings.value(), minutes.value()));
        }
    }
}
