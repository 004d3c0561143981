package org.pullproof.ui.values;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.pullproof.session.TradeConstant;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.units.Figures;

/** One constant: what it is, its numbers to be edited together, and the way back to the program's own. */
final class ValueForm extends VBox {
    private static final int PAIRS = 2;

    private final ValuesViewModel model;
    private final Map<TradeConstant.Figure, CheckedField<Double>> fields = new LinkedHashMap<>();
    private final Label problem = Labels.wrapped("", "refusal");
    private Optional<TradeConstant> shown = Optional.empty();

    ValueForm(ValuesViewModel model) {
        super(10);
        this.model = model;
        getStyleClass().add("value-form");
        problem.managedProperty().bind(problem.textProperty().isNotEmpty());
        model.problemProperty().addListener((of, before, words) -> problem.setText(words));
    }

    void show(Optional<TradeConstant> constant) {
        shown = constant;
        fields.clear();
        problem.setText("");
        getChildren().clear();
        constant.ifPresentOrElse(
                this::fill,
                () -> getChildren().setAll(Labels.wrapped("Choose a value to see and edit it.", "caption")));
    }

    private void fill(TradeConstant constant) {
        getChildren()
                .setAll(
                        Labels.wrapped(constant.words(), "strong"),
                        Labels.wrapped(constant.name() + " · " + constant.status(), "caption"),
                        numbers(constant),
                        problem);
        if (constant.isEditable()) {
            getChildren().add(buttons(constant));
        } else {
            getChildren().add(Labels.wrapped("Shown, not edited: it is not judgement.", "caption"));
        }
    }

    private GridPane numbers(TradeConstant constant) {
        GridPane grid = new GridPane();
        grid.setHgap(10);
        grid.setVgap(6);
        int place = 0;
        for (TradeConstant.Figure number : constant.numbers()) {
            CheckedField<Double> field = field(constant, number);
            fields.put(number, field);
            String name = number.label().isEmpty() ? "value" : number.label();
            int column = place % PAIRS * 2;
            grid.add(Labels.whole(name, "caption"), column, place / PAIRS);
            grid.add(new VBox(2, field, own(constant, number)), column + 1, place / PAIRS);
            place++;
        }
        return grid;
    }

    private CheckedField<Double> field(TradeConstant constant, TradeConstant.Figure number) {
        CheckedField<Double> field =
                new CheckedField<>(constant.words() + " " + number.label(), text -> read(constant, number, text));
        field.show(Figures.plain(model.value(number)));
        field.field().setPrefColumnCount(7);
        field.field().setEditable(constant.isEditable());
        field.field().setOnAction(entered -> keep());
        field.setMaxWidth(150);
        return field;
    }

    private static double read(TradeConstant constant, TradeConstant.Figure number, String text) {
        double value;
        try {
            value = Double.parseDouble(text.replace(',', '.'));
        } catch (NumberFormatException noNumber) {
            throw new IllegalArgumentException("A plain number, in " + constant.unit() + ".", noNumber);
        }
        if (!(value >= constant.least(number) && value <= constant.most(number))) {
            throw new IllegalArgumentException("From " + Figures.plain(constant.least(number)) + " to "
                    + Figures.plain(constant.most(number)) + ".");
        }
        return value;
    }

    private Label own(TradeConstant constant, TradeConstant.Figure number) {
        boolean edited = model.value(number) != number.own();
        return Labels.whole(
                edited ? constant.unit() + "; own " + Figures.plain(number.own()) : constant.unit(), "caption");
    }

    private HBox buttons(TradeConstant constant) {
        Button keep = Actions.plain("Keep", "Enter");
        keep.setId("keep-value");
        keep.setOnAction(pressed -> keep());
        Button back = Actions.plain("Back to the program's own", "");
        back.setId("value-back");
        back.setOnAction(pressed -> model.back(constant));
        back.setDisable(!model.isEdited(constant));
        return new HBox(8, keep, back);
    }

    private void keep() {
        Map<TradeConstant.Figure, Double> typed = new LinkedHashMap<>();
        boolean allRead = fields.values().stream().map(CheckedField::take).reduce(true, Boolean::logicalAnd);
        fields.forEach((number, field) -> field.value().ifPresent(value -> typed.put(number, value)));
        if (allRead) {
            shown.ifPresent(constant -> model.keep(constant, typed));
        }
    }

    /** Gives the first number the keyboard. */
    void focusFirst() {
        fields.values().stream().findFirst().ifPresent(field -> field.field().requestFocus());
    }
}
