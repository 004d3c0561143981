package org.pullproof.ui.tuneup;

import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.TuneUpFindings.State;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Mark;

/** The steps in order; Space or a double click ticks the chosen one. Its cautions stand below. */
final class StepList extends VBox {
    private static final double WIDEST_TITLE = 260;

    /** Done steps that stay in sight above the present one. */
    private static final int SEEN_BEFORE = 1;

    private static final double AT_THE_STEP = 196;

    private final TuneUpViewModel model;
    private final ListView<StepState> list = new ListView<>();
    private final Cautions cautions = new Cautions();
    private final Label of = Labels.wrapped("", "caption");
    private final Label help = Labels.wrapped("", "caption");
    private final ComboBox<String> plan = new ComboBox<>();
    private final Label time = Labels.wrapped("", "caption");
    private final Label because = Labels.wrapped("", "caption");
    private final VBox act = new VBox(2);
    private final Button edit = Actions.plain("edit this step for this car", "");
    private final StepForm form;
    private boolean showing;

    StepList(TuneUpViewModel model, Runnable printCard) {
        super(6);
        this.model = model;
        list.setAccessibleText("Steps in order");
        list.setCellFactory(view -> new Line());
        list.setMinHeight(176);
        list.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        list.setOnMouseClicked(click -> {
            if (click.getButton() == MouseButton.PRIMARY && click.getClickCount() == 2) {
                toggle();
            }
        });
        list.getSelectionModel().selectedItemProperty().addListener((chosen, before, step) -> warn(step));
        VBox.setVgrow(list, Priority.ALWAYS);
        plan.setId("plan");
        plan.setAccessibleText("What is to be done");
        plan.valueProperty().addListener((chosen, before, name) -> want(name));
        HBox head = new HBox(
                8, Labels.whole("Steps in order", "section"), Labels.whole("Space: done or not done", "caption"));
        head.setAlignment(Pos.CENTER_LEFT);
        form = new StepForm(model, this::closeForm);
        edit.getStyleClass().add("link");
        edit.setOnAction(pressed -> openForm());
        act.getChildren().setAll(of, help, cautions, edit);
        act.getStyleClass().add("well");
        // below the list, so that the keyboard comes to the steps first
        Button card = Actions.plain("Run card", "F4");
        card.setOnAction(pressed -> printCard.run());
        HBox choice = new HBox(8, Labels.whole("Do", "caption"), plan, card);
        choice.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(head, list, choice, time, atTheStep());
    }

    /** What the step asks for scrolls by itself, so that the list keeps its length. */
    private ScrollPane atTheStep() {
        ScrollPane scroll = new ScrollPane(new VBox(8, act, because));
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinHeight(AT_THE_STEP);
        scroll.setPrefHeight(AT_THE_STEP);
        scroll.setAccessibleText("The chosen step: tools, torques and cautions");
        return scroll;
    }

    private void openForm() {
        Optional.ofNullable(list.getSelectionModel().getSelectedItem()).ifPresent(chosen -> {
            act.getChildren().setAll(of, form);
            form.show(model.whole(chosen.step().id()));
        });
    }

    private void closeForm() {
        if (act.getChildren().contains(form)) {
            act.getChildren().setAll(of, help, cautions, edit);
        }
    }

    private void want(@Nullable String name) {
        if (name != null && !showing) {
            model.want(name);
        }
    }

    private void showPlan() {
        showing = true;
        plan.getItems().setAll(model.plans());
        plan.setValue(model.plan().orElse(null));
        showing = false;
        time.setText(model.timeLeft());
        because.setText(String.join(" ", model.findings().plan().because()));
    }

    private void key(KeyEvent key) {
        if (key.getCode() == KeyCode.SPACE) {
            toggle();
            key.consume();
        }
    }

    private void toggle() {
        Optional.ofNullable(list.getSelectionModel().getSelectedItem()).ifPresent(model::toggle);
    }

    void show() {
        closeForm();
        showPlan();
        int chosen = list.getSelectionModel().getSelectedIndex();
        list.getItems().setAll(model.findings().steps());
        int now = chosen >= 0 ? chosen : firstNow();
        list.getSelectionModel().select(Math.min(now, list.getItems().size() - 1));
        if (chosen < 0) {
            // the rows have no height before they are laid out
            Platform.runLater(() -> list.scrollTo(Math.max(0, now - SEEN_BEFORE)));
        }
    }

    private int firstNow() {
        for (int i = 0; i < list.getItems().size(); i++) {
            if (list.getItems().get(i).state() == State.NOW) {
                return i;
            }
        }
        return 0;
    }

    private void warn(@Nullable StepState step) {
        if (step != null) {
            closeForm();
            of.setText("Step " + step.step().id() + ": " + step.step().title());
            help.setText(help(step.step()));
            help.setManaged(!help.getText().isEmpty());
            cautions.show(step.step().cautions());
        }
    }

    /** Tools and figures of a step. */
    private static String help(Step step) {
        String tools = step.outfit().tools().isEmpty()
                ? ""
                : "Ready: " + String.join(", ", step.outfit().tools()) + ". ";
        String figures = step.outfit().figures().isEmpty()
                ? ""
                : String.join("; ", step.outfit().figures()) + "; the maker's manual comes first.";
        return (tools + figures).strip();
    }

    private static Mark mark(StepState step) {
        if (step.state() == State.DONE) {
            return Mark.TICK;
        }
        if (step.step().kind() == Step.Kind.START_GATE) {
            return Mark.POSTS;
        }
        return switch (step.state()) {
            case NOW -> Mark.POINTER;
            case WAITS -> Mark.BROKEN_RING;
            case READY, DONE -> Mark.RING;
        };
    }

    /** One step: mark, title, word, minutes. */
    private static final class Line extends ListCell<StepState> {
        @Override
        protected void updateItem(@Nullable StepState step, boolean empty) {
            super.updateItem(step, empty);
            setText(null);
            setPrefWidth(0);
            setGraphic(step == null || empty ? null : line(step));
        }

        private static HBox line(StepState step) {
            boolean done = step.state() == State.DONE;
            Label title = Labels.wrapped(step.step().title(), done ? "faint" : "plain");
            title.setPrefWidth(WIDEST_TITLE);
            title.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(title, Priority.ALWAYS);
            HBox line = new HBox(
                    8,
                    mark(step).node(),
                    title,
                    Labels.whole(step.words(), "caption"),
                    Labels.whole(step.step().minutes() + " min", "narrow"));
            line.setAlignment(Pos.CENTER_LEFT);
            return line;
        }
    }
}
