package org.pullproof.ui.dynoday;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.drawing.PowerChart;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.CopyKey;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
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
    private final VBox beforeAPull;
    private boolean arrangedForPulls;

    /**
     * @param cautions that stand at a pull
     */
    public DynoDaySheet(DynoDayViewModel model, PullFileChooser chooser, List<String> cautions) {
        this.model = model;
        Cautions care = new Cautions();
        care.show(cautions);
        this.beforeAPull = new VBox(2, Labels.whole("Before a pull", "section"), care);
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
    }

    private Node[] empty() {
        HBox todo = new HBox(28, drop, air);
        HBox.setHgrow(drop, Priority.ALWAYS);
        VBox.setVgrow(chart, Priority.ALWAYS);
        return new Node[] {todo, beforeAPull, chart};
    }

    private Node[] filled() {
        VBox left = new VBox(10, pulls, drop, air);
        left.getStyleClass().add("dyno-left");
        VBox.setVgrow(pulls, Priority.ALWAYS);
        HBox body = new HBox(20, left, chart);
        HBox.setHgrow(chart, Priority.ALWAYS);
        body.getStyleClass().add("dyno-body");
        VBox.setVgrow(body, Priority.ALWAYS);
        return new Node[] {body, beforeAPull};
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
