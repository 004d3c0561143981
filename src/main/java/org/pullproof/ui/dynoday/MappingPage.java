package org.pullproof.ui.dynoday;

import java.util.List;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.pullproof.app.ForeignTable.Preview;
import org.pullproof.drawing.PreviewCurve;
import org.pullproof.dyno.TableLook;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.units.Figures;
import org.pullproof.units.Unit;

/** Asks which columns of a foreign table make a pull, and shows what comes of it. */
final class MappingPage extends VBox {
    private static final int MOST_COLUMNS = 8;
    private static final int LONGEST = 18;

    private final MappingViewModel model;
    private final Figures figures;
    private final DrawingView curve = new DrawingView();
    private final Label outcome = Labels.wrapped("");
    private final Button take = Actions.plain("Take it in", "Enter");

    /**
     * @param taken what happens when the columns are told
     * @param left what happens when the file is left
     */
    MappingPage(MappingViewModel model, Figures figures, Runnable taken, Runnable left) {
        this.model = model;
        this.figures = figures;
        getStyleClass().add("mapping-page");
        take.setId("mapping-take");
        take.setDefaultButton(true);
        take.setOnAction(pressed -> taken.run());
        Button leave = Actions.plain("Leave this file", "Esc");
        leave.setId("mapping-leave");
        leave.setOnAction(pressed -> left.run());
        curve.getStyleClass().add("mapping-curve");
        VBox.setVgrow(curve, Priority.ALWAYS);
        model.previewProperty().addListener((of, before, after) -> show(after));
        getChildren()
                .setAll(
                        choices(),
                        Labels.whole("First rows of the file", "section"),
                        rows(model.table().look()),
                        outcome,
                        new HBox(8, take, leave),
                        curve);
        show(model.previewProperty().get());
    }

    private Node choices() {
        ComboBox<String> speed = box("mapping-speed", "Engine speed, rpm, is in the column");
        speed.setItems(FXCollections.observableList(model.headers()));
        model.speed().ifPresent(speed::setValue);
        speed.valueProperty().addListener((of, before, header) -> model.chooseSpeed(header));
        ComboBox<String> value = box("mapping-value", "Power or torque is in the column");
        value.setItems(FXCollections.observableList(model.headers()));
        value.valueProperty().addListener((of, before, header) -> model.chooseValue(header));
        ComboBox<Unit> unit = box("mapping-unit", "Its unit");
        unit.setItems(FXCollections.observableList(MappingViewModel.units()));
        unit.setConverter(new UnitWords());
        unit.valueProperty().addListener((of, before, chosen) -> model.chooseUnit(chosen));
        return new HBox(
                16,
                asked("1  Engine speed, rpm", speed),
                asked("2  Power or torque", value),
                asked("3  Its unit", unit));
    }

    private static <T> ComboBox<T> box(String id, String name) {
        ComboBox<T> box = new ComboBox<>();
        box.setId(id);
        box.setAccessibleText(name);
        return box;
    }

    private static VBox asked(String words, Node box) {
        return new VBox(3, Labels.whole(words, "caption"), box);
    }

    private static Node rows(TableLook look) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("mapping-rows");
        addRow(grid, look.headers(), "second");
        look.rows().forEach(row -> addRow(grid, row, "figure"));
        return grid;
    }

    private static void addRow(GridPane grid, List<String> cells, String style) {
        int row = grid.getRowCount();
        for (int i = 0; i < Math.min(cells.size(), MOST_COLUMNS); i++) {
            grid.add(Labels.whole(shortened(cells.get(i)), style), i, row);
        }
    }

    private static String shortened(String cell) {
        return cell.length() <= LONGEST ? cell : cell.substring(0, LONGEST - 1) + "…";
    }

    private void show(Preview preview) {
        take.setDisable(preview.problem().isPresent());
        outcome.setText(preview.problem().orElseGet(() -> words(preview)));
        curve.show((width, height) -> PreviewCurve.of(preview.pulls(), figures, width, height));
    }

    private static String words(Preview preview) {
        int pulls = preview.pulls().size();
        return "So read, " + (preview.whole() ? "the file holds " : "the first rows of the file hold ")
                + (pulls == 1 ? "one pull" : pulls + " pulls") + ", from "
                + Figures.number(preview.pulls().get(0).firstRpm(), 0) + " to "
                + Figures.number(preview.pulls().get(0).lastRpm(), 0)
                + " rpm. Tables with these headers are then read so without asking.";
    }

    /** Gives the first choice the keyboard. */
    void focusFirst() {
        lookup(model.speed().isPresent() ? "#mapping-value" : "#mapping-speed").requestFocus();
    }

    /** "hp, power". */
    private static final class UnitWords extends StringConverter<Unit> {
        @Override
        public String toString(Unit unit) {
            return unit == null
                    ? ""
                    : unit.symbol() + ", " + unit.dimension().words().replaceFirst("^an? ", "");
        }

        @Override
        public Unit fromString(String words) {
            throw new UnsupportedOperationException("units are chosen, not typed");
        }
    }
}
