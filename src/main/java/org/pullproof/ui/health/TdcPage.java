package org.pullproof.ui.health;

import java.util.List;
import java.util.function.Function;
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
import org.pullproof.health.TestKind;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;

/** The TDC guide: damper, cap and rotor at their angles, the next turn, and what air does to a crank off top dead centre. */
final class TdcPage extends VBox {
    private final TdcViewModel model;
    private final Function<TestKind, List<String>> cautionsOf;
    private final DrawingView dials = new DrawingView();
    private final DrawingView cycle = new DrawingView();
    private final GridPane table = new GridPane();
    private final VBox beside = new VBox();
    private final Label source = Labels.wrapped("", "caption");
    private final Button turned = Actions.plain("Turned, next cylinder", "Enter");
    private final Runnable leave;
    private final IntConsumer type;

    /**
     * @param leave goes back to the sheet
     * @param type types the leak-down reading of a cylinder
     */
    TdcPage(
            TdcViewModel model,
            Function<TestKind, List<String>> cautionsOf,
            Runnable leave,
            IntConsumer type) {
        this.model = model;
        this.cautionsOf = cautionsOf;
        this.leave = leave;
        this.type = type;
        getStyleClass().add("tdc-page");
        dials.getStyleClass().add("tdc-dials");
        cycle.getStyleClass().add("tdc-cycle");
        beside.getStyleClass().add("tdc-beside");
        table.getStyleClass().add("tdc-table");
        HBox.setHgrow(dials, Priority.ALWAYS);
        HBox drawn = new HBox(12, dials, beside);
        VBox.setVgrow(drawn, Priority.ALWAYS);
        getChildren().setAll(actions(), drawn, cycle, table);
        addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        model.nowProperty().addListener((of, before, after) -> show());
        show();
    }

    private Node actions() {
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
        showTable();
    }

    private void showBeside() {
        GridPane pushes = new GridPane();
        pushes.getStyleClass().add("tdc-pushes");
        for (TdcViewModel.Push push : model.pushes()) {
            int row = pushes.getRowCount();
            pushes.add(Labels.whole(push.degrees()), 0, row);
            pushes.add(Labels.whole(push.torque(), "strong"), 1, row);
            pushes.add(Labels.whole(push.other(), "caption"), 2, row);
        }
        Cautions cautions = new Cautions();
        cautions.show(cautionsOf.apply(TestKind.LEAKDOWN));
        beside.getChildren()
                .setAll(
                        Labels.whole("Before air goes in", "section"),
                        cautions,
                        Labels.whole("If the piston is off TDC", "section"),
                        Labels.wrapped(model.supply() + " pushes on the crank with", "caption"),
                        pushes,
                        Labels.wrapped(model.measures(), "caption"),
                        Labels.whole("Compression or exhaust?", "section"));
        model.signs().forEach(sign -> beside.getChildren().add(Labels.wrapped(sign, "tdc-sign")));
    }

    private void showTable() {
        table.getChildren().clear();
        table.getColumnConstraints().setAll(named());
        model.order().forEach(cylinder -> table.getColumnConstraints().add(figure()));
        line(0, "In firing order", model.order().stream().map(String::valueOf).toList(), "caption");
        List<TdcViewModel.Line> lines = model.lines();
        for (int i = 0; i < lines.size(); i++) {
            line(i + 1, lines.get(i).name(), lines.get(i).words(), "tdc-figure");
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

    private void line(int row, String name, List<String> words, String styleClass) {
        table.add(cell(Labels.whole(name, "caption"), row, Pos.CENTER_LEFT), 0, row);
        for (int i = 0; i < words.size(); i++) {
            Label word = Labels.whole(words.get(i), styleClass);
            if (model.order().get(i) == model.nowProperty().get()) {
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
