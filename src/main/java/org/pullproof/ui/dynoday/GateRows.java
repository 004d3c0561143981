package org.pullproof.ui.dynoday;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.advice.GatePoint;
import org.pullproof.advice.GatePoint.State;
import org.pullproof.advice.LoadGate;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Mark;

/** The points of the gate before the first pull, each to tick or to pass with a reason. */
final class GateRows extends VBox {
    private final DayViewModel model;

    GateRows(DayViewModel model) {
        this.model = model;
        getStyleClass().addAll("box", "gate-rows");
    }

    void show() {
        Optional<String> focused = focusedPoint();
        LoadGate gate = model.gate();
        getStyleClass().remove("closed");
        if (!gate.isOpen()) {
            getStyleClass().add("closed");
        }
        getChildren().setAll(head(gate.isOpen()));
        String about = "";
        for (GatePoint point : gate.points()) {
            if (!point.about().equals(about)) {
                about = point.about();
                getChildren().add(Labels.whole(about, "caption"));
            }
            getChildren().add(row(point));
        }
        focused.ifPresent(id -> Optional.ofNullable(lookup("#" + id)).ifPresent(Node::requestFocus));
    }

    /** The tick that has the keyboard keeps it when the rows are made anew. */
    private Optional<String> focusedPoint() {
        return Optional.ofNullable(getScene())
                .flatMap(scene -> Optional.ofNullable(scene.getFocusOwner()))
                .map(Node::getId)
                .filter(id -> id.startsWith("gate-"));
    }

    private static Node head(boolean open) {
        HBox head = new HBox(
                8,
                Mark.POSTS.node(),
                Labels.whole("Gate before the first pull", "section"),
                open ? Labels.whole("open", "tag") : Labels.whole("closed", "tag", "stop"));
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    private Node row(GatePoint point) {
        VBox row = new VBox(2);
        row.getStyleClass().add("gate-row");
        HBox line = new HBox(8, mark(point), words(point));
        line.setAlignment(Pos.TOP_LEFT);
        if (!point.key().equals(LoadGate.START_GATE) && point.state() != State.READ) {
            line.getChildren().add(reason(point, row));
        }
        row.getChildren().setAll(line);
        return row;
    }

    private Node mark(GatePoint point) {
        boolean byHand = point.state() == State.OPEN || point.state() == State.TICKED;
        if (!byHand || point.key().equals(LoadGate.START_GATE)) {
            return point.passed() ? Labels.whole("passed", "tag") : Labels.whole("closed", "tag", "stop");
        }
        CheckBox tick = new CheckBox();
        tick.setId("gate-" + point.key());
        tick.setAccessibleText(point.name());
        tick.setSelected(point.state() == State.TICKED);
        tick.setOnAction(pressed -> model.tick(point.key(), tick.isSelected(), model.model()::say));
        return tick;
    }

    private static Node words(GatePoint point) {
        Label words = Labels.wrapped(point.name());
        VBox both = new VBox(words);
        boolean tells = point.state() != State.TICKED
                && !point.why().isEmpty()
                && !point.why().equals("not ticked");
        if (tells) {
            both.getChildren().add(Labels.wrapped(point.why(), "caption"));
        }
        HBox.setHgrow(both, Priority.ALWAYS);
        return both;
    }

    private Node reason(GatePoint point, VBox row) {
        boolean passed = point.state() == State.PASSED;
        Button button = new Button(passed ? "take back" : "reason");
        button.getStyleClass().add("link");
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleText((passed ? "Take the reason back: " : "Pass with a reason: ") + point.name());
        button.setOnAction(pressed -> {
            if (passed) {
                model.tick(point.key(), false, model.model()::say);
            } else {
                ask(point, row);
            }
        });
        return button;
    }

    private void ask(GatePoint point, VBox row) {
        CheckedField<String> reason = new CheckedField<>("Why it may be passed: " + point.name(), text -> text);
        reason.field().setId("gate-reason");
        reason.field().setPromptText("why it may be passed; the reason stands in the report");
        reason.onTaken(why -> model.pass(point.key(), why, reason::refuse));
        row.getChildren().setAll(row.getChildren().get(0), reason);
        reason.field().requestFocus();
    }
}
