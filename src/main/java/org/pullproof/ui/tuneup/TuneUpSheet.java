package org.pullproof.ui.tuneup;

import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.ui.parts.PictureStrip;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.shell.Sheet;

/**
 * Is it in tune, and may it be started? Steps to tick, the start gate, what is off the car, plugs, wires, parts, settings, and what is
 * due afterwards. Keys: P plugs, S shelf, G gate, F4 the printed run card.
 */
public final class TuneUpSheet implements Sheet {
    private static final double RIGHT = 428;
    private static final double LEFT = 376;

    /** From this width on the boxes stand in two columns. */
    private static final double TWO_COLUMNS = 1230;

    private final HBox page = new HBox(24);
    private final StepList steps;
    private final GateBox gate;
    private final ShelfBox shelf;
    private final PlugRows plugs;
    private final WireRows wires;
    private final PartsBox parts;
    private final SettingsBox settings;
    private final AfterBox after;
    private final VBox first = new VBox(14);
    private final VBox second = new VBox(14);
    private final HBox columns = new HBox(24, first, second);
    private final ScrollPane scroll = new ScrollPane(columns);
    private final Runnable printCard;

    /**
     * @param pictures photographs of the parts that are off and of the plugs
     * @param printCard asks where to, and prints the run card
     */
    public TuneUpSheet(TuneUpViewModel model, PictureStrip.Acts pictures, Runnable printCard) {
        this.printCard = printCard;
        BenchViewModel bench = model.bench();
        this.steps = new StepList(model, printCard);
        this.gate = new GateBox(model);
        this.shelf = new ShelfBox(model, bench, pictures);
        this.plugs = new PlugRows(model, pictures);
        this.wires = new WireRows(model);
        this.parts = new PartsBox(bench);
        this.settings = new SettingsBox(bench);
        this.after = new AfterBox(bench);
        page.getStyleClass().add("tuneup-sheet");
        SheetStyle.on(page);
        HBox.setHgrow(steps, Priority.ALWAYS);
        steps.setMinWidth(LEFT);
        layScroll();
        layColumns(false);
        page.widthProperty().addListener((of, before, width) -> layColumns(width.doubleValue() >= TWO_COLUMNS));
        page.getChildren().setAll(steps, scroll);
        model.model().appraisalProperty().addListener((of, before, now) -> show());
        show();
    }

    /** The right side scrolls by itself, so that the steps with their cautions stay in sight. */
    private void layScroll() {
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinHeight(0);
        scroll.setPrefHeight(0);
        scroll.setAccessibleText("Start gate, off-car shelf, plugs, wires, parts, settings, afterwards");
        first.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(first, Priority.ALWAYS);
        HBox.setHgrow(second, Priority.ALWAYS);
    }

    private void layColumns(boolean two) {
        double width = two ? 2 * RIGHT + 24 : RIGHT;
        if (scroll.getMinWidth() == width) {
            return;
        }
        scroll.setMinWidth(width);
        scroll.setPrefWidth(width);
        first.setPrefWidth(RIGHT - 14);
        second.setPrefWidth(RIGHT - 14);
        List<Node> tuning = List.of(gate, shelf, plugs, wires);
        List<Node> beside = List.of(parts, settings, after);
        first.getChildren().setAll(tuning);
        second.getChildren().clear();
        (two ? second : first).getChildren().addAll(beside);
        columns.getChildren().setAll(two ? List.of(first, second) : List.of(first));
    }

    private void show() {
        steps.show();
        plugs.show();
        shelf.show();
        gate.show();
        wires.show();
        parts.show();
        settings.show();
        after.show();
    }

    @Override
    public Stage stage() {
        return Stage.TUNE_UP;
    }

    @Override
    public Node node() {
        return page;
    }

    @Override
    public void key(KeyEvent key) {
        boolean used = true;
        switch (key.getCode()) {
            case P -> go(plugs, plugs.first());
            case S -> go(shelf, shelf.first());
            case G -> go(gate, gate.first());
            case F4 -> printCard.run();
            default -> used = false;
        }
        if (used) {
            key.consume();
        }
    }

    /** Brings a box to the top of what is seen, and the focus into it. */
    private void go(Node box, Node first) {
        scroll.layout();
        double room = columns.getHeight() - scroll.getViewportBounds().getHeight();
        double top = columns.sceneToLocal(box.localToScene(0, 0)).getY();
        scroll.setVvalue(room > 0 ? Math.min(1, top / room) : 0);
        // later, so that the letter pressed is not typed into the field
        Platform.runLater(first::requestFocus);
    }
}
