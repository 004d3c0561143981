package org.pullproof.ui.dynoday;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.ui.dynoday.AirEntry.MoistureForm;
import org.pullproof.ui.dynoday.AirEntry.Part;
import org.pullproof.ui.dynoday.AirEntry.PressureForm;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Choice;
import org.pullproof.ui.parts.Labels;
import org.pullproof.units.Figures;
import org.pullproof.units.Unit;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Metar;

/**
 * The air being typed: which pressure, which moisture, their figures; the ways out stand at the pressure itself, and beside it what
 * the air would do to the figures.
 */
final class AirForm extends HBox {
    private static final int FIELD_WIDTH = 150;
    private static final int REPORT_WIDTH = 380;

    private final AirViewModel model;
    private final Map<Part, CheckedField<String>> fields = new EnumMap<>(Part.class);
    private final Map<Part, Label> names = new EnumMap<>(Part.class);
    private final Map<Part, Label> beside = new EnumMap<>(Part.class);
    private final Choice<PressureForm> pressure =
            new Choice<>("Pressure is", List.of(PressureForm.values()), PressureForm::choice);
    private final Choice<MoistureForm> moisture = moisture(false);
    private final Choice<MoistureForm> moistureOfReport = moisture(true);
    private final VBox moistureChoice = new VBox();
    private final Label age = Labels.whole("", "caption");
    private final Label factor = Labels.wrapped("", "strong");
    private final Label waits = Labels.wrapped("", "caption");
    private final WayOut wayOut = new WayOut(this::takeAsSetting, () -> focus(Part.ELEVATION));
    private final AirEffectPanel effect = new AirEffectPanel();
    private final Button use = Actions.plain("Use this air", "Enter");
    private final Button later = Actions.plain("Keep as typed, decide later", "Esc");
    private final GridPane grid = new GridPane();

    /** Whether a person changed something since the last reading was used or shown. */
    private boolean drafted;

    AirForm(AirViewModel model) {
        this.model = model;
        getStyleClass().add("air-form");
        pressure.onChosen(this::choose);
        moisture.onChosen(this::choose);
        moistureOfReport.onChosen(this::choose);
        use.setOnAction(pressed -> useAir());
        later.visibleProperty().bind(model.typingProperty());
        later.setOnAction(pressed -> model.leave());
        for (Part part : Part.values()) {
            fields.put(part, field(part));
            names.put(part, Labels.whole("", "caption"));
            beside.put(part, Labels.wrapped("", "caption"));
        }
        addEventHandler(KeyEvent.KEY_PRESSED, this::escape);
        arrange();
        VBox left = new VBox(10, new HBox(8, Labels.whole("Air at the intake", "section"), age), grid);
        HBox.setHgrow(left, Priority.ALWAYS);
        getChildren().setAll(left, effect);
        show();
    }

    private void escape(KeyEvent key) {
        if (key.getCode() == KeyCode.ESCAPE && model.typingProperty().get()) {
            model.leave();
            key.consume();
        }
    }

    /** Added in the order the keyboard goes: the four figures first, then what they are, then what is done with them. */
    private void arrange() {
        grid.getStyleClass().add("air-grid");
        ColumnConstraints entry = new ColumnConstraints();
        entry.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().setAll(new ColumnConstraints(), entry);
        for (Part part : Part.values()) {
            add(of(part, names), entry(part), row(part));
        }
        pressure.setMaxWidth(USE_PREF_SIZE);
        add(Labels.whole("pressure is", "caption"), pressure, 0);
        add(Labels.whole("moisture as", "caption"), moistureChoice, 3);
        grid.add(new VBox(6, factor, new HBox(8, use, later), waits), 1, 7);
    }

    private void add(Label name, Node entry, int row) {
        name.getStyleClass().add("air-name");
        GridPane.setValignment(name, VPos.TOP);
        grid.add(name, 0, row);
        grid.add(entry, 1, row);
    }

    /** The field with what stands beside it; the ways out stand below the pressure. */
    private Node entry(Part part) {
        HBox line = new HBox(10, of(part, fields), of(part, beside));
        line.setAlignment(Pos.BASELINE_LEFT);
        return part == Part.PRESSURE ? new VBox(6, line, wayOut) : line;
    }

    /** Only a report has a moisture of its own. */
    private static Choice<MoistureForm> moisture(boolean report) {
        List<MoistureForm> forms = Stream.of(MoistureForm.values())
                .filter(form -> report || form != MoistureForm.METAR)
                .toList();
        Choice<MoistureForm> choice = new Choice<>("Moisture as", forms, MoistureForm::words);
        choice.setMaxWidth(USE_PREF_SIZE);
        return choice;
    }

    private static int row(Part part) {
        return switch (part) {
            case PRESSURE -> 1;
            case TEMPERATURE -> 2;
            case HUMIDITY -> 4;
            case ELEVATION -> 5;
            case READ_AT -> 6;
        };
    }

    private static <T> T of(Part part, Map<Part, T> map) {
        return Objects.requireNonNull(map.get(part), part.name());
    }

    private CheckedField<String> field(Part part) {
        CheckedField<String> field = new CheckedField<>(
                part.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                text -> model.entry().take(part, text, model.figures()));
        field.field().setId("air-" + part.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        field.field().setPrefColumnCount(9);
        field.field().setMaxWidth(FIELD_WIDTH);
        field.onTaken(kept -> taken(part, kept));
        field.onForgotten(() -> forgotten(part));
        field.field().setOnAction(entered -> enter(part));
        field.field().focusedProperty().addListener((of, before, focused) -> showResult());
        return field;
    }

    /** A bare figure is shown with the unit it was taken in. */
    private void taken(Part part, String kept) {
        of(part, fields).show(kept);
        changed(part);
    }

    /** Another elevation may make a pressure possible, or impossible. */
    private void changed(Part part) {
        drafted = true;
        if (part == Part.ELEVATION || part == Part.READ_AT) {
            again(Part.PRESSURE);
        }
        showResult();
    }

    private void forgotten(Part part) {
        model.entry().forget(part);
        changed(part);
    }

    /** Reads an entry anew, because what it is read as has changed. */
    private void again(Part part) {
        CheckedField<String> field = of(part, fields);
        String text = field.field().getText();
        if (!text.isBlank()) {
            field.show("");
            field.field().setText(text);
            field.take();
        }
    }

    private void choose(PressureForm form) {
        drafted = true;
        model.entry().choose(form);
        again(Part.PRESSURE);
        showForms();
        showResult();
    }

    private void choose(MoistureForm form) {
        drafted = true;
        model.entry().choose(form);
        of(Part.HUMIDITY, fields).show("");
        showForms();
        showResult();
        focus(form.isTyped() ? Part.HUMIDITY : Part.TEMPERATURE);
    }

    private void takeAsSetting() {
        choose(PressureForm.ALTIMETER);
        focus(Part.TEMPERATURE);
    }

    void focus(Part part) {
        of(part, fields).field().requestFocus();
    }

    private void enter(Part part) {
        if (of(part, fields).take()) {
            useAir();
        }
        showResult();
    }

    private void useAir() {
        boolean allRead = fields.values().stream().map(CheckedField::take).reduce(true, Boolean::logicalAnd);
        showResult();
        Optional<String> missing = model.entry().waitsFor();
        if (allRead && missing.isEmpty()) {
            drafted = false;
            model.use();
        } else if (allRead) {
            waits.setText(missing.orElse(""));
        }
    }

    /** Alt A takes the pressure as an altimeter setting, Alt H goes to the height, where these stand. */
    boolean way(String key) {
        return wayOut.take(key);
    }

    private void showForms() {
        AirEntry air = model.entry();
        Figures figures = model.figures();
        pressure.show(Optional.of(air.pressureForm()));
        boolean report = air.pressureForm() == PressureForm.METAR;
        Choice<MoistureForm> forms = report ? moistureOfReport : moisture;
        forms.show(Optional.of(air.moistureForm()));
        moistureChoice.getChildren().setAll(forms);
        of(Part.PRESSURE, fields).field().setMaxWidth(report ? REPORT_WIDTH : FIELD_WIDTH);
        of(Part.PRESSURE, fields).field().setPrefColumnCount(report ? 30 : 9);
        for (Part part : Part.values()) {
            of(part, names).setText(air.words(part));
            Unit unit = air.unit(part, figures);
            boolean text = part == Part.PRESSURE && report;
            of(part, fields).field().setPromptText(text ? "the report as it stands" : "–, " + unit.symbol());
        }
        show(Part.HUMIDITY, air.moistureForm().isTyped());
        show(Part.READ_AT, air.pressureForm() == PressureForm.ELSEWHERE);
        of(Part.READ_AT, beside).setText("where that barometer or weather station stands");
        of(Part.ELEVATION, beside).setText(elevationWords());
    }

    private String elevationWords() {
        return model.garageElevation()
                .map(told -> "of this place; the garage lies at " + told)
                .orElse("of this place, where the engine breathes");
    }

    private void show(Part part, boolean shown) {
        List.<Node>of(of(part, names), of(part, fields), of(part, beside)).forEach(node -> {
            node.setVisible(shown);
            node.setManaged(shown);
        });
    }

    private void showResult() {
        AirEntry air = model.entry();
        factor.setText("factor " + model.factorWords());
        wayOut.show(air.lookalike(), of(Part.PRESSURE, fields).isRefused());
        of(Part.TEMPERATURE, beside).setText(air.report().map(AirForm::ofReport).orElse("at the intake"));
        effect.show(model.effect());
        for (Part part : Part.values()) {
            boolean stands = of(part, fields).isVisible() && !of(part, fields).isRefused();
            of(part, beside).setVisible(stands);
            of(part, beside).setManaged(stands);
        }
        boolean refused = fields.values().stream().anyMatch(CheckedField::isRefused);
        waits.setText(refused ? "Nothing typed is lost; \"Use this air\" waits until it is put right." : "");
    }

    private static String ofReport(Metar report) {
        String own = report.temperature()
                .map(read -> "at the intake; the report has " + read + ", which stands, ± 5 °C, if you read none")
                .orElse("at the intake; the report has none");
        return report.dewPoint().isPresent() ? own : own + "; nor a dew point";
    }

    /** Shows the last reading, unless another is being typed. */
    void show() {
        boolean typing = fields.values().stream().anyMatch(field -> field.isRefused() || field.isChanged());
        if (!typing && !drafted) {
            model.latest().ifPresent(this::show);
        }
        showForms();
        age.setText(model.age());
        showResult();
    }

    private void show(AirReading reading) {
        AirTexts texts = AirTexts.of(reading.air());
        model.entry().choose(texts.pressure());
        model.entry().choose(texts.moisture());
        put(Part.ELEVATION, texts);
        put(Part.READ_AT, texts);
        put(Part.PRESSURE, texts);
        put(Part.TEMPERATURE, texts);
        put(Part.HUMIDITY, texts);
        drafted = false;
    }

    /** What was kept may be refused today, if the garage was since said to lie at another height. */
    private void put(Part part, AirTexts texts) {
        CheckedField<String> field = of(part, fields);
        model.entry().forget(part);
        field.show("");
        field.field().setText(texts.fields().getOrDefault(part, ""));
        field.take();
    }
}
