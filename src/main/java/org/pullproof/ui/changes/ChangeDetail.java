package org.pullproof.ui.changes;

import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.app.AmendChange.Amendment;
import org.pullproof.changes.Change;
import org.pullproof.changes.RotatingPart;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Shown;
import org.pullproof.units.Money;

/** The chosen change: what is recorded of it, to be put right in place, and its pulls. */
final class ChangeDetail extends VBox {
    private final ChangesViewModel model;
    private final CheckedField<String> what = new CheckedField<>("What was done", text -> text);
    private final CheckedField<Money> cost = new CheckedField<>("What it cost", Money::parse);
    private final CheckedField<Set<RotatingPart>> touched =
            new CheckedField<>("Rotating parts it touched", ChangesViewModel::rotatingParts);
    private final HBox recorded;
    private final FlowPane pulls = new FlowPane(18, 1);
    private final VBox remarked = new VBox();

    ChangeDetail(ChangesViewModel model) {
        this.model = model;
        getStyleClass().add("change-detail");
        what.field().setId("detail-what");
        cost.field().setId("detail-cost");
        cost.field().setPromptText("18USD");
        cost.field().setPrefColumnCount(5);
        touched.field().setId("detail-touched");
        touched.field().setPromptText("flywheel, gear …");
        touched.field().setPrefColumnCount(8);
        what.onTaken(words -> amend(new Amendment(Optional.of(words), Optional.empty(), Optional.empty())));
        cost.onTaken(
                money -> amend(new Amendment(Optional.empty(), Optional.of(Optional.of(money)), Optional.empty())));
        cost.onForgotten(() -> amend(new Amendment(Optional.empty(), Optional.of(Optional.empty()), Optional.empty())));
        touched.onTaken(parts -> amend(new Amendment(Optional.empty(), Optional.empty(), Optional.of(parts))));
        touched.onForgotten(() -> amend(new Amendment(Optional.empty(), Optional.empty(), Optional.of(Set.of()))));
        Node wide = labelled("What was done", what);
        HBox.setHgrow(wide, Priority.ALWAYS);
        recorded = new HBox(10, wide, labelled("Cost", cost), labelled("Rotating parts touched", touched));
        getChildren().setAll(recorded, pulls, remarked);
    }

    private static Node labelled(String words, CheckedField<?> input) {
        Label label = Labels.whole(words, "caption");
        label.setLabelFor(input.field());
        return new VBox(label, input);
    }

    private void amend(Amendment amendment) {
        model.amendChosen(amendment);
    }

    void show() {
        Optional<Change> change = model.chosenChange();
        Shown.only(recorded, change.isPresent());
        change.ifPresent(this::fill);
        pulls.getChildren().clear();
        remarked.getChildren().clear();
        for (PullLine line : model.chosenPulls()) {
            HBox words = new HBox(6, Labels.whole(line.name(), "strong"), Labels.whole(line.power(), "narrow"));
            if (line.remark().isEmpty()) {
                pulls.getChildren().add(words);
            } else {
                remarked.getChildren().addAll(words, Labels.wrapped(line.remark(), "caption", "second"));
            }
        }
    }

    private void fill(Change change) {
        what.show(change.what());
        cost.show(change.cost().map(Money::toString).orElse(""));
        touched.show(String.join(
                ", ", change.rotating().stream().map(RotatingPart::key).toList()));
    }
}
