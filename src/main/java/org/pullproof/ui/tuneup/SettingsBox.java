package org.pullproof.ui.tuneup;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.drawing.TimingStack;
import org.pullproof.tuneup.CurvePoint;
import org.pullproof.tuneup.Setting;
import org.pullproof.tuneup.VacuumSource;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Choice;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.QuantityField;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** How the engine is set: the timing as stacked lines, each setting in a field, and the setup it is saved as. */
final class SettingsBox extends VBox {
    private static final double PICTURE = 150;
    private static final double FIELD = 104;

    private final BenchViewModel bench;
    private final DrawingView picture = new DrawingView();
    private final Label timing = Labels.wrapped("");
    private final VBox remarks = new VBox(2);
    private final GridPane grid = new GridPane();
    private final Map<Setting, QuantityField> fields = new EnumMap<>(Setting.class);
    private final Choice<VacuumSource> vacuum =
            new Choice<>("Vacuum canister draws", List.of(VacuumSource.values()), VacuumSource::key);
    private final CheckedField<List<CurvePoint>> curve =
            new CheckedField<>("Mechanical advance curve", BenchViewModel::readCurve);
    private final CheckedField<String> name = new CheckedField<>("Name of the setup", text -> text);

    SettingsBox(BenchViewModel bench) {
        super(6);
        this.bench = bench;
        picture.setMinHeight(PICTURE);
        picture.setPrefHeight(PICTURE);
        grid.setHgap(8);
        grid.setVgap(3);
        vacuum.onChosen(bench::vacuum);
        curve.field().setId("advance-curve");
        curve.field().setPromptText("rpm and degrees: 800 0, 1600 8, 2800 22");
        curve.onTaken(points -> bench.curve(points, curve::refuse));
        curve.onForgotten(() -> bench.curve(List.of(), curve::refuse));
        name.show("as tuned");
        name.field().setId("settings-setup");
    }

    void show() {
        if (getChildren().isEmpty() || fields.size() != bench.offered().size()) {
            build();
        }
        var found = bench.findings().settings();
        timing.setText(found.timing().orElse(""));
        shown(timing, found.timing().isPresent());
        boolean stacked = TimingStack.of(bench.settings(), picture.getMinHeight(), PICTURE)
                .isPresent();
        shown(picture, stacked);
        picture.clear();
        if (stacked) {
            var settings = bench.settings();
            picture.show(
                    (width, height) -> TimingStack.of(settings, width, height).orElseThrow());
        }
        remarks.getChildren()
                .setAll(found.remarks().stream()
                        .map(words -> Labels.wrapped(words, "caption", "red"))
                        .toList());
        fields.forEach((setting, field) -> showField(
                field, bench.settings().of(setting).map(Quantity::toString).orElse("")));
        showField(curve, bench.curveText());
        vacuum.show(bench.settings().source());
    }

    private static void shown(javafx.scene.Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    private static void showField(CheckedField<?> field, String text) {
        if (!field.isChanged() && !field.isRefused()) {
            field.show(text);
        }
    }

    private void build() {
        fields.clear();
        grid.getChildren().clear();
        bench.offered().forEach(this::row);
        List<javafx.scene.Node> all = new ArrayList<>(
                List.of(Labels.section("Set to", "vacuum stands apart"), picture, timing, remarks, grid));
        if (bench.hasCurve()) {
            all.add(Labels.whole("Mechanical advance over base", "caption"));
            all.add(curve);
            all.add(new HBox(8, Labels.whole("Canister draws", "caption"), vacuum));
        }
        all.add(save());
        getChildren().setAll(all);
    }

    private void row(Setting setting) {
        QuantityField field = new QuantityField(setting.words(), unit(setting.dimension()));
        field.setPrefWidth(FIELD);
        field.setMaxWidth(FIELD);
        field.field().setPromptText(unit(setting.dimension()).symbol());
        field.onTaken(taken -> bench.tell(setting, Optional.of(taken), field::refuse));
        field.onForgotten(() -> bench.tell(setting, Optional.empty(), field::refuse));
        fields.put(setting, field);
        Label words = Labels.wrapped(setting.words());
        GridPane.setHgrow(words, Priority.ALWAYS);
        GridPane.setHalignment(field, HPos.RIGHT);
        words.setMaxWidth(Double.MAX_VALUE);
        grid.addRow(grid.getRowCount(), words, field);
    }

    private static Unit unit(Dimension dimension) {
        return switch (dimension) {
            case ANGLE -> Unit.DEGREE;
            case ROTATION -> Unit.RPM;
            case PRESSURE -> Unit.INHG;
            case TIME -> Unit.SECOND;
            case LENGTH -> Unit.MM;
            case SHARE -> Unit.PERCENT;
            default -> throw new IllegalArgumentException("No setting is " + dimension.words());
        };
    }

    private HBox save() {
        Button save = Actions.plain("Save as setup", "");
        save.setOnAction(pressed -> keep());
        name.onTaken(typed -> {});
        HBox.setHgrow(name, Priority.ALWAYS);
        return new HBox(8, name, save);
    }

    private void keep() {
        if (name.take()) {
            name.value().ifPresent(setup -> bench.saveAs(setup, name::refuse));
        }
    }
}
