package org.pullproof.ui.tuneup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.pullproof.health.TestKind;
import org.pullproof.health.Words;
import org.pullproof.session.About;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.tuneup.TuneUpFindings.PlugFinding;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.PictureStrip;
import org.pullproof.ui.parts.QuantityField;
import org.pullproof.ui.shell.Focus;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;

/** Every plug in a row: gap as found, gap as set, torque, and what is remarkable. */
final class PlugRows extends VBox {
    private static final double FIELD = 74;
    private static final double HEAT = 44;
    private static final double LOOK = 108;

    private final TuneUpViewModel model;
    private final GridPane grid = new GridPane();
    private final Label range = Labels.wrapped("", "caption");
    private final List<Row> rows = new ArrayList<>();
    private final PictureStrip pictures;
    private final Label pictured = Labels.whole("", "caption");

    /**
     * @param pictures photographs of the plugs
     */
    PlugRows(TuneUpViewModel model, PictureStrip.Acts pictures) {
        super(4);
        this.model = model;
        this.pictures = new PictureStrip(About.plug(1), pictures);
        grid.setHgap(8);
        grid.setVgap(3);
        range.setMaxWidth(FIELD * 3 + HEAT + LOOK);
        HBox beside = new HBox(8, pictured, this.pictures);
        beside.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(Labels.section("Plugs", "press a number for its pictures"), grid, range, beside);
        picture(1);
    }

    /** The field the key P comes to. */
    Node first() {
        return rows.get(0).found.field();
    }

    void show() {
        List<PlugFinding> plugs = model.plugs();
        if (rows.size() != plugs.size()) {
            build(plugs.size());
        }
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(plugs.get(i));
        }
        range.setText(model.plugRange());
        pictures.show();
    }

    /** Shows the pictures of the plug of a cylinder. */
    private void picture(int cylinder) {
        pictured.setText("Plug " + cylinder);
        pictures.show(About.plug(cylinder));
    }

    private void build(int cylinders) {
        rows.clear();
        grid.getChildren().clear();
        grid.addRow(
                0,
                caption(""),
                caption("gap found"),
                caption("gap set"),
                caption("torque"),
                caption("heat"),
                caption("look as found"));
        for (int cylinder = 1; cylinder <= cylinders; cylinder++) {
            Row row = new Row(cylinder);
            rows.add(row);
            grid.addRow(2 * cylinder - 1, row.nodes());
            grid.add(row.remark, 1, 2 * cylinder, 5, 1);
        }
    }

    private static Label caption(String words) {
        return Labels.whole(words, "caption");
    }

    /** The fields of one plug. */
    private final class Row {
        private final int cylinder;
        private final QuantityField found;
        private final QuantityField set;
        private final QuantityField torque;
        private final CheckedField<String> heat;
        private final ComboBox<String> look = new ComboBox<>();
        private final Label remark = Labels.wrapped("", "caption", "red");
        private boolean showing;

        Row(int cylinder) {
            this.cylinder = cylinder;
            this.found = field("gap as found", Shown.GAP);
            this.set = field("gap as set", Shown.GAP);
            this.torque = field("torque", Shown.TORQUE);
            this.heat = new CheckedField<>("Plug " + cylinder + ", heat range as marked", text -> text);
            heat.setPrefWidth(HEAT);
            heat.setMaxWidth(HEAT);
            heat.onTaken(taken -> keep(heat));
            heat.onForgotten(() -> keep(heat));
            look.setAccessibleText("Plug " + cylinder + ", look as found");
            look.getItems().setAll(Words.of(TestKind.PLUG));
            look.setPrefWidth(LOOK);
            look.setMaxWidth(LOOK);
            look.valueProperty().addListener((chosen, before, word) -> chosen(word));
        }

        private QuantityField field(String what, Shown use) {
            QuantityField field = new QuantityField(
                    "Plug " + cylinder + ", " + what, () -> model.figures().unit(use));
            field.setPrefWidth(FIELD);
            field.setMaxWidth(FIELD);
            field.onTaken(taken -> keep(field));
            field.onForgotten(() -> keep(field));
            return field;
        }

        private void chosen(@Nullable String word) {
            if (word != null && !showing) {
                model.recordLook(cylinder, word);
            }
        }

        private void keep(CheckedField<?> typed) {
            model.record(
                    new PlugRecord(
                            cylinder,
                            found.value(),
                            set.value(),
                            torque.value(),
                            heat.value().orElse("")),
                    typed::refuse);
        }

        void show(PlugFinding plug) {
            show(found, plug.plug(), PlugRecord::oldGap);
            show(set, plug.plug(), PlugRecord::newGap);
            show(torque, plug.plug(), PlugRecord::torque);
            if (!heat.isChanged() && !heat.isRefused()) {
                heat.show(plug.plug().heatRange());
            }
            showing = true;
            look.setValue(model.look(cylinder).orElse(null));
            showing = false;
            remark.setText(plug.remark().orElse(""));
            remark.setVisible(plug.remark().isPresent());
            remark.setManaged(plug.remark().isPresent());
        }

        private static void show(QuantityField field, PlugRecord plug, Function<PlugRecord, Optional<Quantity>> known) {
            if (!field.isChanged() && !field.isRefused()) {
                field.show(known.apply(plug).map(Quantity::toString).orElse(""));
            }
        }

        Node[] nodes() {
            Button number = Actions.plain(String.valueOf(cylinder), "");
            number.getStyleClass().add("link");
            number.setId("plug-pictures-" + cylinder);
            number.setAccessibleText("Show the pictures of plug " + cylinder);
            number.setOnAction(pressed -> {
                picture(cylinder);
                Focus.into(pictures);
            });
            GridPane.setValignment(number, VPos.CENTER);
            return new Node[] {number, found, set, torque, heat, look};
        }
    }
}
