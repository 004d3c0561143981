package org.pullproof.ui.health;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.pullproof.health.TestKind;
import org.pullproof.health.Words;
import org.pullproof.ui.health.ReadingRules.RefusedEntry;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Choice;

/** Types a reading of the chosen cylinder: Enter keeps it and goes on to the next one. */
final class EntryForm extends VBox {
    private final HealthViewModel model;
    private final ComboBox<TestKind> test = new ComboBox<>();
    private final FlowPane columns = new FlowPane();
    private final Map<EntryColumn, CheckedField<String>> fields = new EnumMap<>(EntryColumn.class);
    private final AirHeard air;

    EntryForm(HealthViewModel model) {
        this.model = model;
        this.air = new AirHeard(model.entry());
        getStyleClass().add("entry-form");
        columns.getStyleClass().add("entry-columns");
        test.setId("entry-test");
        test.setItems(FXCollections.observableList(Arrays.stream(TestKind.values())
                .filter(kind -> !WholeEngine.onStrip(kind))
                .toList()));
        test.setConverter(new TestWords());
        test.setVisibleRowCount(12);
        test.setAccessibleText("Test");
        test.valueProperty().bindBidirectional(model.entry().testProperty());
        test.valueProperty().addListener((of, before, after) -> build());
        getChildren().setAll(columns);
        build();
    }

    /** Gives the keyboard to the reading of the chosen cylinder. */
    void type() {
        field(EntryColumn.VALUE).field().requestFocus();
    }

    private CheckedField<String> field(EntryColumn column) {
        return java.util.Objects.requireNonNull(fields.get(column), column.words());
    }

    private void build() {
        fields.clear();
        columns.getChildren().setAll(labelled("Test", test));
        for (EntryColumn column : EntryColumn.of(model.entry().testProperty().get())) {
            columns.getChildren().add(labelled(label(column), input(column)));
        }
    }

    /** The button that does what Enter does. */
    Button keepButton() {
        Button keep = Actions.plain("Keep, next cylinder", "Enter");
        keep.setOnAction(pressed -> keepNow());
        return keep;
    }

    private String label(EntryColumn column) {
        String unit = model.entry().unitWords(column);
        return unit.isEmpty() ? column.words() : column.words() + ", " + unit;
    }

    private static Node labelled(String name, Node input) {
        Label label = new Label(name);
        label.getStyleClass().add("caption");
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.setLabelFor(input);
        return new VBox(label, input);
    }

    private Node input(EntryColumn column) {
        if (column == EntryColumn.AIR) {
            return air;
        }
        if (!column.choices().isEmpty()) {
            Choice<String> choice = new Choice<>(column.words(), column.choices(), words -> words.replace('-', ' '));
            choice.show(Optional.of(model.entry().text(column)));
            choice.onChosen(chosen -> model.entry().put(column, chosen));
            return choice;
        }
        return text(column);
    }

    private CheckedField<String> text(EntryColumn column) {
        CheckedField<String> field =
                new CheckedField<>(label(column), typed -> model.entry().read(column, typed));
        field.show(model.entry().text(column));
        field.field().setId("entry-" + column.key());
        field.field()
                .setPrefColumnCount(
                        wide(column) ? 7 : column == EntryColumn.ROUND || column == EntryColumn.STROKES ? 2 : 4);
        field.field().setPromptText(prompt(column));
        field.onTaken(read -> model.entry().put(column, read));
        field.onForgotten(() -> model.entry().put(column, ""));
        field.field().setOnAction(entered -> keepNow());
        fields.put(column, field);
        return field;
    }

    private boolean wide(EntryColumn column) {
        boolean words = !Words.of(model.entry().testProperty().get()).isEmpty();
        return column == EntryColumn.NOTE || (column == EntryColumn.VALUE && words);
    }

    private String prompt(EntryColumn column) {
        List<String> words = Words.of(model.entry().testProperty().get());
        return column == EntryColumn.VALUE && !words.isEmpty() ? words.get(0) + ", …" : "–";
    }

    private void keepNow() {
        boolean allRead = fields.values().stream().map(CheckedField::take).reduce(true, Boolean::logicalAnd);
        if (!allRead) {
            return;
        }
        if (model.entry().text(EntryColumn.VALUE).isEmpty()) {
            field(EntryColumn.VALUE).refuse("Nothing is typed yet.");
            return;
        }
        try {
            model.keep();
            fields.forEach((column, field) -> field.show(model.entry().text(column)));
            air.clear();
            type();
        } catch (RefusedEntry refused) {
            at(refused.column()).refuse(String.valueOf(refused.getMessage()));
        }
    }

    /** Says at the reading why what was pasted cannot be taken in. */
    void refuse(String why) {
        field(EntryColumn.VALUE).refuse(why);
    }

    private CheckedField<String> at(String column) {
        return fields.entrySet().stream()
                .filter(entry -> entry.getKey().key().equals(column))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseGet(() -> field(EntryColumn.VALUE));
    }

    private static final class TestWords extends StringConverter<TestKind> {
        @Override
        public String toString(TestKind kind) {
            return kind == null ? "" : kind.words();
        }

        @Override
        public TestKind fromString(String words) {
            return Arrays.stream(TestKind.values())
                    .filter(kind -> kind.words().equals(words))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
