package org.pullproof.ui.dynoday;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.ui.dynoday.AirEntry.Part;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.weather.AirReading;

/** The air typed at the intake: three fields, the factor at once, and the way out where a pressure is an altimeter setting. */
final class AirPanel extends VBox {
    private final DynoDayViewModel model;
    private final Map<Part, CheckedField<Quantity>> fields = new EnumMap<>(Part.class);
    private final Label age = Labels.whole("", "caption");
    private final Label factor = Labels.wrapped("", "strong");
    private final Label waits = Labels.wrapped("", "caption");
    private final Label old =
            Labels.wrapped("Older than 20 min: read it again before the next pull.", "caption", "red");
    private final Button asAltimeter = Actions.plain("", "");
    private final Button use = Actions.plain("Use this air", "Enter");

    AirPanel(DynoDayViewModel model) {
        this.model = model;
        getStyleClass().add("air-panel");
        asAltimeter.setId("as-altimeter");
        asAltimeter.setWrapText(true);
        asAltimeter.setMinWidth(0);
        asAltimeter.setMinHeight(USE_PREF_SIZE);
        use.setOnAction(pressed -> useAir());
        GridPane grid = new GridPane();
        grid.getStyleClass().add("air-grid");
        ColumnConstraints entry = new ColumnConstraints();
        entry.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().setAll(new ColumnConstraints(), entry);
        for (Part part : Part.values()) {
            grid.addRow(grid.getRowCount(), Labels.whole(part.words(), "caption"), field(part));
        }
        getChildren().setAll(new VBox(Labels.whole("Air at the intake", "section"), age), grid, factor, use, waits);
        show();
    }

    private CheckedField<Quantity> field(Part part) {
        CheckedField<Quantity> field = new CheckedField<>(
                part.words(),
                text -> model.air().take(part, text, model.model().look().figures()));
        field.field().setId("air-" + part.name().toLowerCase(java.util.Locale.ROOT));
        field.field().setPrefColumnCount(7);
        field.field().setMaxWidth(116);
        field.onTaken(taken -> showFactor());
        field.onForgotten(() -> forget(part));
        field.field().setOnAction(entered -> enter(part));
        field.field().focusedProperty().addListener((of, before, focused) -> offerWayOut());
        fields.put(part, field);
        return field;
    }

    private CheckedField<Quantity> of(Part part) {
        return java.util.Objects.requireNonNull(fields.get(part), part.words());
    }

    private void forget(Part part) {
        model.air().forget(part);
        showFactor();
    }

    private void enter(Part part) {
        boolean read = of(part).take();
        offerWayOut();
        if (read) {
            useAir();
        }
    }

    private void useAir() {
        boolean allRead = fields.values().stream().map(CheckedField::take).reduce(true, Boolean::logicalAnd);
        offerWayOut();
        if (!allRead) {
            return;
        }
        Optional<String> missing = model.air().waitsFor();
        if (missing.isPresent()) {
            waits.setText(missing.get());
            return;
        }
        model.useAir();
    }

    /** A pressure that looks like an altimeter setting can be taken as one, at the field itself. */
    private void offerWayOut() {
        CheckedField<Quantity> pressure = of(Part.PRESSURE);
        Optional<Quantity> station =
                pressure.isRefused() ? stationInstead(pressure.field().getText()) : Optional.empty();
        station.ifPresent(instead -> {
            asAltimeter.setText("Take it as altimeter setting:\n" + instead);
            asAltimeter.setOnAction(pressed -> take(instead));
        });
        boolean offered = pressure.getChildren().contains(asAltimeter);
        if (station.isPresent() && !offered) {
            pressure.getChildren().add(asAltimeter);
        } else if (station.isEmpty()) {
            pressure.getChildren().remove(asAltimeter);
        }
        showFactor();
    }

    private Optional<Quantity> stationInstead(String text) {
        try {
            return model.air().asAltimeterSetting(text, model.model().look().figures());
        } catch (IllegalArgumentException notEvenAPressure) {
            return Optional.empty();
        }
    }

    private void take(Quantity station) {
        CheckedField<Quantity> pressure = of(Part.PRESSURE);
        pressure.getChildren().remove(asAltimeter);
        pressure.field().setText(station.toString());
        pressure.take();
        showFactor();
        of(Part.TEMPERATURE).field().requestFocus();
    }

    private void showFactor() {
        factor.setText("factor " + model.factorWords());
        waits.setText(
                fields.values().stream().anyMatch(CheckedField::isRefused)
                        ? "Nothing typed is lost; \"Use this air\" waits until it is put right."
                        : "");
    }

    /** Shows the last reading, unless another is being typed. */
    void show() {
        Figures figures = model.model().look().figures();
        for (Part part : Part.values()) {
            of(part).field().setPromptText("–, " + part.unit(figures).symbol());
        }
        boolean typing = fields.values().stream().anyMatch(field -> field.isRefused() || field.isChanged());
        if (!typing) {
            model.latestAir().ifPresent(this::show);
        }
        age.setText(model.airAge());
        getChildren().remove(old);
        if (model.airIsOld()) {
            getChildren().add(2, old);
        }
        showFactor();
    }

    private void show(AirReading reading) {
        put(Part.PRESSURE, reading.stationPressure());
        put(Part.TEMPERATURE, reading.temperature());
        put(Part.HUMIDITY, reading.relativeHumidity());
    }

    /** What was kept may be refused today, if the garage was since said to lie at another height. */
    private void put(Part part, Quantity kept) {
        of(part).field().setText(kept.toString());
        of(part).take();
    }
}
