package org.pullproof.ui.tuneup;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.tuneup.TuneUpFindings.OffCar;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.shell.Sheet;

/** Is it in tune, and may it be started? Steps to tick, plugs, what is off the car, and the start gate. */
public final class TuneUpSheet implements Sheet {
    private static final double RIGHT = 404;
    private static final double LEFT = 376;

    private final TuneUpViewModel model;
    private final HBox page = new HBox(24);
    private final StepList steps;
    private final PlugRows plugs;
    private final VBox shelf = new VBox();
    private final GateBox gate;
    private final WireRows wires;

    public TuneUpSheet(TuneUpViewModel model) {
        this.model = model;
        this.steps = new StepList(model);
        this.plugs = new PlugRows(model);
        this.gate = new GateBox(model);
        this.wires = new WireRows(model);
        page.getStyleClass().add("tuneup-sheet");
        SheetStyle.on(page);
        shelf.getStyleClass().add("box");
        HBox.setHgrow(steps, Priority.ALWAYS);
        steps.setMinWidth(LEFT);
        VBox boxes = new VBox(14, gate, shelf);
        VBox right = new VBox(14, boxes, plugs, wires);
        page.getChildren().setAll(steps, scrolling(right));
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        show();
    }

    /** The right column scrolls by itself, so that the steps with their cautions stay in sight. */
    private static ScrollPane scrolling(VBox column) {
        ScrollPane pane = new ScrollPane(column);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setMinWidth(RIGHT);
        pane.setPrefWidth(RIGHT);
        pane.setMinHeight(0);
        pane.setPrefHeight(0);
        pane.setAccessibleText("Start gate, off-car shelf, plugs and wires");
        return pane;
    }

    private void show() {
        steps.show();
        plugs.show();
        showShelf(model.findings().offCar());
        gate.show();
        wires.show();
    }

    private void showShelf(List<OffCar> off) {
        shelf.getChildren()
                .setAll(
                        Labels.whole("Off-car shelf", "section"),
                        Labels.whole(counted(off.size(), "thing is", "things are") + " off the car", "caption"));
        off.forEach(part -> shelf.getChildren().add(backRow(part)));
    }

    private Node backRow(OffCar off) {
        Label name = Labels.wrapped(off.part());
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        Button back = new Button("back on");
        back.getStyleClass().add("link");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setAccessibleText("Put back: " + off.part());
        back.setOnAction(pressed -> model.putBack(off.part()));
        HBox row = new HBox(8, name, back);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        return row;
    }

    private static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    @Override
    public Stage stage() {
        return Stage.TUNE_UP;
    }

    @Override
    public Node node() {
        return page;
    }
}
