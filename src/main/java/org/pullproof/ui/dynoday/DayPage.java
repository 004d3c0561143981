package org.pullproof.ui.dynoday;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DayPlan;
import org.pullproof.dyno.RunList.Run;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;

/** Before and between pulls: the gate, how the car stands, the pulls of the day, what is due, when to break off. */
final class DayPage extends VBox {
    private final DayViewModel model;
    private final GateRows gate;
    private final Map<DayFact, CheckedField<String>> facts = new EnumMap<>(DayFact.class);
    private final CheckedField<DayPlan> plan = new CheckedField<>("Order of the setups", DayViewModel::readPlan);
    private final CheckedField<String> abort = new CheckedField<>("Cause of an abort", text -> text);
    private final VBox runs = new VBox(2);
    private final VBox due = new VBox(2);
    private final Cautions rules = new Cautions();
    private final Label act = Labels.wrapped("", "caption");

    DayPage(DayViewModel model) {
        this.model = model;
        this.gate = new GateRows(model);
        getStyleClass().add("day-page");
        Button back = Actions.plain("Back to the pulls", "Esc");
        back.setId("day-back");
        back.setOnAction(pressed -> model.shownProperty().set(false));
        VBox right = new VBox(
                14,
                part("How the car stands today", facts()),
                part("Pulls of the day", planned(), runs),
                part("Before the next pull", due),
                part("Break the pull off at", rules, act, aborted()));
        gate.getStyleClass().add("day-gate");
        right.getStyleClass().add("day-right");
        HBox body = new HBox(24, gate, right);
        HBox.setHgrow(right, Priority.ALWAYS);
        getChildren().setAll(body, back);
    }

    private static VBox part(String title, Node... below) {
        VBox part = new VBox(6, Labels.whole(title, "section"));
        part.getChildren().addAll(below);
        return part;
    }

    private Node facts() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("day-facts");
        for (DayFact fact : DayFact.values()) {
            CheckedField<String> field = new CheckedField<>(fact.words(), text -> text);
            field.field().setId("day-" + fact.key());
            field.field().setPromptText(fact.hint());
            field.onTaken(words -> model.tell(fact, words));
            field.onForgotten(() -> model.tell(fact, ""));
            GridPane.setHgrow(field, Priority.ALWAYS);
            facts.put(fact, field);
            grid.addRow(grid.getRowCount(), Labels.whole(fact.words(), "second"), field);
        }
        return grid;
    }

    private Node planned() {
        plan.field().setId("day-plan");
        plan.field().setPromptText("order: base, timing 32, base × 3");
        plan.onTaken(model::keepPlan);
        plan.onForgotten(model::forgetPlan);
        return plan;
    }

    private Node aborted() {
        abort.field().setId("day-abort");
        abort.field().setPromptText("a pull was broken off: the cause, then Enter");
        abort.onTaken(cause -> {
            abort.show("");
            model.abort(cause);
        });
        return abort;
    }

    void show() {
        gate.show();
        facts.forEach((fact, field) -> {
            if (!field.isChanged()) {
                field.show(model.told(fact).orElse(""));
            }
        });
        if (!plan.isChanged()) {
            plan.show(model.plan());
        }
        runs.getChildren().setAll(runs(model.runs()));
        due.getChildren()
                .setAll(model.due().stream()
                        .map(sentence -> Labels.wrapped(sentence))
                        .toList());
        rules.show(model.gate().rules().abort());
        act.setText(model.gate().rules().abortAct());
    }

    /** Gives the first point that can be ticked the keyboard. */
    void focusFirst() {
        Optional.ofNullable(lookup(".check-box")).ifPresent(Node::requestFocus);
    }

    private static List<Node> runs(List<Run> all) {
        return all.isEmpty()
                ? List.of(Labels.wrapped("No pull today and no order yet.", "caption"))
                : all.stream().map(DayPage::row).toList();
    }

    private static Node row(Run run) {
        Label name = Labels.whole(run.name());
        run.excluded().ifPresent(reason -> name.getStyleClass().add("struck"));
        String stands = run.made().map(made -> "made " + made.toLocalTime()).orElse("to come");
        Optional<String> why = run.excluded().map(reason -> ", does not count: " + reason);
        return new HBox(8, name, Labels.wrapped(stands + why.orElse(""), "caption"));
    }
}
