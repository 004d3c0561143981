package org.pullproof.ui.dynoday;

import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.drawing.PowerChart;
import org.pullproof.ui.parts.CopyKey;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.shell.Sheet;

/** What does it make? The air, the pulls and their chart. */
public final class DynoDaySheet implements Sheet {
    private final DynoDayViewModel model;
    private final VBox page = new VBox();
    private final AirPanel air;
    private final DropPanel drop;
    private final PullsPanel pulls;
    private final DrawingView chart = new DrawingView();
    private boolean arrangedForPulls;

    public DynoDaySheet(DynoDayViewModel model, PullFileChooser chooser) {
        this.model = model;
        this.air = new AirPanel(model);
        this.drop = new DropPanel(model, chooser);
        this.pulls = new PullsPanel(model);
        page.getStyleClass().add("dyno-sheet");
        SheetStyle.on(page);
        chart.getStyleClass().add("power-chart");
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        model.chosenProperty().addListener((of, before, after) -> showChart());
        arrange();
        show();
    }

    /** Before the first pull the two things to do stand on top; after it the chart takes the room. */
    private void arrange() {
        boolean any = model.anyPull();
        if (!page.getChildren().isEmpty() && any == arrangedForPulls) {
            return;
        }
        arrangedForPulls = any;
        page.getChildren().setAll(any ? filled() : empty());
        VBox.setVgrow(page.getChildren().get(page.getChildren().size() - 1), Priority.ALWAYS);
    }

    private Node[] empty() {
        HBox todo = new HBox(28, drop, air);
        HBox.setHgrow(drop, Priority.ALWAYS);
        return new Node[] {todo, chart};
    }

    private Node[] filled() {
        VBox left = new VBox(10, pulls, drop, air);
        left.getStyleClass().add("dyno-left");
        VBox.setVgrow(pulls, Priority.ALWAYS);
        HBox body = new HBox(20, left, chart);
        HBox.setHgrow(chart, Priority.ALWAYS);
        return new Node[] {body};
    }

    private void show() {
        arrange();
        pulls.show();
        drop.show();
        air.show();
        showChart();
    }

    private void showChart() {
        PowerChart.Content content = model.chart();
        chart.show((width, height) -> PowerChart.of(content, width, height));
        pulls.refreshLines();
    }

    @Override
    public Stage stage() {
        return Stage.DYNO_DAY;
    }

    @Override
    public Node node() {
        return page;
    }

    @Override
    public void key(KeyEvent key) {
        CopyKey.copy(key, model::table);
        if (key.getCode() == KeyCode.I && key.isShortcutDown()) {
            drop.choose();
            key.consume();
        } else if (key.getCode() == KeyCode.X && !key.isShortcutDown() && !key.isAltDown()) {
            pulls.takeOut();
            key.consume();
        }
    }
}
