package org.pullproof.ui.worth;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.worth.OptionDraft.Field;
import org.pullproof.worth.Option;

/** Edits an option, or adds one: costs, own hours, expected gain. Enter keeps it. */
final class OptionForm extends VBox {
    private final WorthViewModel model;
    private final Map<Field, CheckedField<String>> fields = new EnumMap<>(Field.class);
    private final FlowPane columns = new FlowPane();
    private final Label title = Labels.whole("", "section");
    private final Label refusal = Labels.wrapped("", "refusal");
    private final HBox buttons = new HBox(8);
    private OptionDraft draft;
    private Optional<Option> edited = Optional.empty();

    OptionForm(WorthViewModel model) {
        this.model = model;
        this.draft = model.newDraft();
        getStyleClass().add("option-form");
        columns.getStyleClass().add("entry-columns");
        for (Field field : Field.values()) {
            columns.getChildren().add(labelled(field));
        }
        getChildren().setAll(title, columns, buttons);
        showDraft();
    }

    private Node labelled(Field field) {
        CheckedField<String> input = new CheckedField<>(field.words(), text -> draft.read(field, text));
        input.field().setId("option-" + field.name().toLowerCase(java.util.Locale.ROOT));
        input.field().setPrefColumnCount(field == Field.NAME ? 16 : field.isMoney() ? 7 : 4);
        input.field().setPromptText(field.isMoney() ? "1400" : "–");
        input.onTaken(read -> draft.put(field, read));
        input.onForgotten(() -> draft.put(field, ""));
        input.field().setOnAction(entered -> keep());
        fields.put(field, input);
        return new VBox(Labels.whole(field.words(), "caption"), input);
    }

    /** Opens an option for editing. */
    void edit(Option option) {
        edited = Optional.of(option);
        draft = model.draft(option);
        showDraft();
        Objects.requireNonNull(fields.get(Field.LIKELY)).field().requestFocus();
    }

    private void another() {
        edited = Optional.empty();
        draft = model.newDraft();
        showDraft();
    }

    /** Name of the option being edited, or empty. */
    String edited() {
        return edited.map(Option::name).orElse("");
    }

    private void showDraft() {
        getChildren().remove(refusal);
        fields.forEach((field, input) -> input.show(draft.text(field)));
        title.setText(edited.map(option -> "Edit: " + option.name()).orElse("Another option"));
        buttons.getChildren().setAll(button("Keep", "Enter", this::keep));
        edited.ifPresent(option -> {
            buttons.getChildren().add(button("New option", "", this::another));
            if (model.isEntered(option)) {
                buttons.getChildren().add(button("Remove what was entered", "", () -> remove(option)));
            }
        });
    }

    private static Button button(String words, String key, Runnable act) {
        Button button = Actions.plain(words, key);
        button.setOnAction(pressed -> act.run());
        return button;
    }

    private void remove(Option option) {
        model.remove(option);
        another();
    }

    private void keep() {
        getChildren().remove(refusal);
        boolean allRead = fields.values().stream().map(CheckedField::take).reduce(true, Boolean::logicalAnd);
        if (!allRead) {
            return;
        }
        try {
            model.keep(draft, edited());
            another();
            Objects.requireNonNull(fields.get(Field.NAME)).field().requestFocus();
        } catch (IllegalArgumentException refused) {
            refusal.setText(String.valueOf(refused.getMessage()));
            getChildren().add(2, refusal);
        }
    }
}
