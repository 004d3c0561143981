package org.pullproof.ui.health;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntConsumer;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.drawing.CycleStrip;
import org.pullproof.drawing.TdcGuide;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;

/** The TDC guide: damper, cap and rotor at their angles, the next turn, and what air does to a crank off top dead centre. */
final class TdcPage extends VBox {
    private final TdcViewModel model;
    private final DrawingView dials = new DrawingView();
    private final DrawingView cycle = new DrawingView();
    private final GridPane table = new GridPane();
    private final VBox beside = new VBox();
    private final VBox signs = new VBox();
    private final HBox drawn = new HBox(12);
    private final HBox actions;
    private final Label source = Labels.wrapped("", "caption");
    private final Button turned = Actions.plain("Turned, next cylinder", "Enter");
    private final Runnable leave;
    private final IntConsumer type;

    /**
     * @param leave goes back to the sheet
     * @param type types the leak-down reading of a cylinder
     */
    TdcPage(TdcViewModel model, Runnable leave, IntConsumer type) {
        this.model = model;
        this.leave = leave;
        this.type = type;
        getStyleClass().add("tdc-page");
        dials.getStyleClass().add("tdc-dials");
        cycle.getStyleClass().add("tdc-cycle");
        beside.getStyleClass().add("tdc-beside");
        table.getStyleClass().add("tdc-table");
        signs.getStyleClass().add("tdc-signs");
        HBox.setHgrow(dials, Priority.ALWAYS);
        HBox.setHgrow(signs, Priority.ALWAYS);
        this.actions = actions();
        addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        model.nowProperty().addListener((of, before, after) -> show());
        show();
    }

    private HBox actions() {
        Button back = Actions.plain("Health", "Esc");
        back.setOnAction(pressed -> leave.run());
        Button before = Actions.plain("Cylinder before", "←");
        before.setOnAction(pressed -> model.before());
        turned.getStyleClass().add("go");
        turned.setId("tdc-turned");
        turned.setOnAction(pressed -> model.turned());
        Button reading = Actions.plain("Type the reading", "F2");
        reading.setOnAction(pressed -> typeReading());
        HBox.setHgrow(source, Priority.ALWAYS);
        source.setMaxWidth(Double.MAX_VALUE);
        source.setAlignment(Pos.CENTER_RIGHT);
        HBox actions = new HBox(8, back, before, turned, reading, source);
        actions.setAlignment(Pos.CENTER_LEFT);
        return actions;
    }

    void typeReading() {
        type.accept(model.nowProperty().get());
    }

    private void press(KeyEvent key) {
        if (key.getCode() == KeyCode.LEFT) {
            model.before();
            key.consume();
        }
    }

    /** Gives the keyboard to the turn. */
    void begin() {
        show();
        turned.requestFocus();
    }

    void show() {
        int now = model.nowProperty().get();
        source.setText(model.source());
        dials.show((width, height) -> TdcGuide.of(model.engine(), now, width, height));
        cycle.show((width, height) -> CycleStrip.of(model.engine(), now, width, height));
        showBeside();
        showSigns();
        showTable();
    }

    private void showBeside() {
        GridPane pushes = new GridPane();
        pushes.getStyleClass().add("tdc-pushes");
        List<TdcViewModel.Push> all = model.pushes();
        int rows = (all.size() + 1) / 2;
        for (int i = 0; i < all.size(); i++) {
            int column = 3 * (i / rows);
            pushes.add(Labels.whole(all.get(i).degrees()), column, i % rows);
            pushes.add(Labels.whole(all.get(i).torque(), "strong"), column + 1, i % rows);
            pushes.add(Labels.whole(all.get(i).other(), "caption"), column + 2, i % rows);
        }
        Cautions cautions = new Cautions();
        cautions.show(model.cautions());
        beside.getChildren()
                .setAll(
                        Labels.whole("Before air goes in", "section"),
                        cautions,
                        Labels.whole(model.supply() + " on a piston off TDC turns the crank with", "section"),
                        pushes,
                        Labels.wrapped(model.measures(), "caption"));
    }

    /** Where a cap would stand, or below the table. */
    private void showSigns() {
        signs.getChildren().setAll(Labels.whole("Compression or exhaust?", "section"));
        model.signs().forEach(sign -> signs.getChildren().add(Labels.wrapped(sign, "tdc-sign")));
        drawn.getChildren().setAll(dials, beside);
        getChildren().setAll(actions, drawn, cycle, table);
        if (model.hasDistributor()) {
            getChildren().add(signs);
        } else {
            drawn.getChildren().add(1, signs);
        }
        dials.getStyleClass().remove("alone");
        if (!model.hasDistributor()) {
            dials.getStyleClass().add("alone");
        }
    }

    private void showTable() {
        table.getChildren().clear();
        table.getColumnConstraints().setAll(named());
        model.order().forEach(cylinder -> table.getColumnConstraints().add(figure()));
        List<TdcViewModel.Line> lines = new ArrayList<>();
        lines.add(new TdcViewModel.Line(
                "In firing order",
                model.order().stream().map(String::valueOf).toList(),
                OptionalInt.of(model.nowProperty().get())));
        lines.addAll(model.lines());
        for (int i = 0; i < lines.size(); i++) {
            line(i, lines.get(i));
        }
    }

    private static ColumnConstraints named() {
        ColumnConstraints column = new ColumnConstraints();
        column.setMinWidth(Region.USE_PREF_SIZE);
        column.setPrefWidth(160);
        return column;
    }

    private static ColumnConstraints figure() {
        ColumnConstraints column = new ColumnConstraints(20, 30, Double.MAX_VALUE);
        column.setHgrow(Priority.ALWAYS);
        column.setHalignment(HPos.RIGHT);
        return column;
    }

    private void line(int row, TdcViewModel.Line line) {
        table.add(cell(Labels.whole(line.name(), "caption"), row, Pos.CENTER_LEFT), 0, row);
        for (int i = 0; i < line.words().size(); i++) {
            Label word = Labels.whole(line.words().get(i), row == 0 ? "caption" : "tdc-figure");
            if (line.marked().equals(OptionalInt.of(model.order().get(i)))) {
                word.getStyleClass().add("tdc-now");
            }
            table.add(cell(word, row, Pos.CENTER_RIGHT), i + 1, row);
        }
    }

    private static Node cell(Label label, int row, Pos place) {
        HBox cell = new HBox(label);
        cell.setAlignment(place);
        cell.getStyleClass().add(row == 0 ? "tdc-head" : "tdc-cell");
        return cell;
    }
}
