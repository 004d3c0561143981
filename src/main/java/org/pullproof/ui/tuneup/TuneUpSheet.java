package org.pullproof.ui.tuneup;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.tuneup.TuneUpFindings.Block;
import org.pullproof.tuneup.TuneUpFindings.OffCar;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Mark;
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
    private final VBox gate = new VBox();

    public TuneUpSheet(TuneUpViewModel model) {
        this.model = model;
        this.steps = new StepList(model);
        this.plugs = new PlugRows(model);
        page.getStyleClass().add("tuneup-sheet");
        SheetStyle.on(page);
        shelf.getStyleClass().add("box");
        gate.getStyleClass().add("box");
        HBox.setHgrow(steps, Priority.ALWAYS);
        steps.setMinWidth(LEFT);
        VBox boxes = new VBox(14, gate, shelf);
        VBox right = new VBox(14, plugs, boxes);
        right.setMinWidth(RIGHT);
        right.setPrefWidth(RIGHT);
        page.getChildren().setAll(steps, right);
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        show();
    }

    private void show() {
        steps.show();
        plugs.show();
        showShelf(model.findings().offCar());
        showGate(model.findings().startBlockedBy());
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

    private void showGate(List<Block> blocks) {
        boolean closed = !blocks.isEmpty();
        gate.getStyleClass().remove("closed");
        if (closed) {
            gate.getStyleClass().add("closed");
        }
        HBox head = new HBox(
                8,
                Mark.POSTS.node(),
                Labels.whole("Start gate", "section"),
                closed ? Labels.whole("closed", "tag", "stop") : Labels.whole("open", "tag"));
        head.setAlignment(Pos.CENTER_LEFT);
        String stands = closed
                ? counted(blocks.size(), "thing stands", "things stand") + " in the way"
                : "Nothing stands in the way of a start.";
        gate.getChildren().setAll(head, Labels.whole(stands, "caption"));
        blocks.forEach(block -> gate.getChildren().add(gateRow(block)));
    }

    private static Node gateRow(Block block) {
        Label what = Labels.wrapped(block.what());
        HBox.setHgrow(what, Priority.ALWAYS);
        what.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(8, what, Labels.whole("step " + block.step(), "caption"));
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
