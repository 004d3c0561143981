package org.pullproof.ui.health;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.event.EventTarget;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.health.RunField;
import org.pullproof.health.TestKind;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Choice;
import org.pullproof.ui.parts.Labels;

/** Before the first reading: which test, how the run is made, and the cautions of the act. */
final class FenderStart extends VBox {
    private final FenderViewModel model;
    private final FenderSetting setting;
    private final Choice<TestKind> test = new Choice<>("Test", FenderSetting.TESTS, TestKind::words);
    private final FlowPane fields = new FlowPane();
    private final Cautions cautions = new Cautions();
    private final Map<RunField, CheckedField<String>> typed = new EnumMap<>(RunField.class);
    private final Button begin = Actions.go("Begin", "Enter");

    FenderStart(FenderViewModel model) {
        this.model = model;
        this.setting = model.setting();
        getStyleClass().add("fender-start");
        fields.getStyleClass().add("fender-fields");
        test.onChosen(this::choose);
        test.setMaxWidth(USE_PREF_SIZE);
        begin.setOnAction(pressed -> beginReading());
        begin.setId("fender-begin");
        getChildren().setAll(head(), body());
    }

    private Node head() {
        Button leave = Actions.plain("Leave fender mode", "Esc");
        leave.setOnAction(pressed -> model.leave());
        HBox head = new HBox(Labels.whole("Before the first reading", "fender-title"), space(), leave);
        head.getStyleClass().add("fender-head");
        return head;
    }

    private static Region space() {
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        return space;
    }

    private Node body() {
        Label told = Labels.wrapped(
                "Told once, kept with each reading. What you leave empty is not recorded. Telling it otherwise begins a new"
                        + " run.",
                "fender-words");
        begin.setMaxWidth(300);
        VBox left = new VBox(18, test, told, fields, begin);
        left.getStyleClass().add("fender-left");
        HBox.setHgrow(left, Priority.ALWAYS);
        VBox right = new VBox(8, Labels.whole("Before you begin", "fender-section"), cautions);
        right.getStyleClass().add("fender-right");
        HBox body = new HBox(36, left, right);
        VBox.setVgrow(body, Priority.ALWAYS);
        return body;
    }

    private void choose(TestKind chosen) {
        model.choose(chosen);
        build();
    }

    /** Shows what is asked of the test and gives the keyboard to the first field. */
    void begin() {
        build();
        typed.values().stream().findFirst().ifPresentOrElse(FenderStart::select, begin::requestFocus);
    }

    /** What is typed takes the place of what was remembered. */
    private static void select(CheckedField<String> first) {
        first.field().requestFocus();
        first.field().selectAll();
    }

    private void build() {
        test.show(Optional.of(setting.test()));
        cautions.show(model.cautions());
        typed.clear();
        fields.getChildren().clear();
        setting.fields().forEach(field -> fields.getChildren().add(labelled(field)));
        if (setting.test() == TestKind.LEAKDOWN) {
            fields.getChildren().add(0, named("The tester shows", leakShown()));
        }
    }

    private Node leakShown() {
        Choice<LeakShown> choice = new Choice<>("The tester shows", List.of(LeakShown.values()), LeakShown::words);
        choice.show(Optional.of(setting.leakShown()));
        choice.onChosen(setting::showLeakAs);
        return choice;
    }

    private Node labelled(RunField field) {
        String unit = setting.unitWords(field);
        return named(unit.isEmpty() ? field.words() : field.words() + ", " + unit, input(field));
    }

    private static Node named(String name, Node input) {
        Label label = Labels.whole(name, "fender-label");
        label.setLabelFor(input);
        return new VBox(4, label, input);
    }

    private Node input(RunField field) {
        return field.choices().isEmpty() ? text(field) : choice(field);
    }

    private Node choice(RunField field) {
        Choice<String> choice = new Choice<>(field.words(), field.choices(), words -> words.replace('-', ' '));
        choice.show(Optional.of(setting.text(field)));
        choice.onChosen(chosen -> setting.put(field, chosen));
        return choice;
    }

    private Node text(RunField field) {
        CheckedField<String> text = new CheckedField<>(field.words(), entry -> setting.read(field, entry));
        text.show(setting.text(field));
        text.field().setId("fender-" + field.key());
        text.field().setPromptText("not recorded");
        text.field().setPrefColumnCount(field == RunField.NOTE ? 18 : 8);
        text.onTaken(read -> setting.put(field, read));
        text.onForgotten(() -> setting.put(field, ""));
        text.field().setOnAction(entered -> beginReading());
        typed.put(field, text);
        return text;
    }

    /** Reads every field; the first number is typed if all can be read. */
    void beginReading() {
        boolean allRead = typed.values().stream().map(CheckedField::take).reduce(true, Boolean::logicalAnd);
        if (allRead) {
            model.enter();
        }
    }

    /** Whether Escape belongs to a field whose entry is refused or half typed. */
    boolean isCorrecting(EventTarget target) {
        return typed.values().stream()
                .anyMatch(field -> field.field() == target && (field.isRefused() || field.isChanged()));
    }
}
