package org.pullproof.ui.dynoday;

import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
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
    private final AirForm form;
    private final AirCard card;
    private final StatedPanel stated;
    private final DropPanel drop;
    private final PullsPanel pulls;
    private final DrawingView chart = new DrawingView();
    private final VBox beforeAPull;
    private Optional<Face> face = Optional.empty();

    /**
     * @param cautions that stand at a pull
     */
    public DynoDaySheet(DynoDayViewModel model, PullFileChooser chooser, List<String> cautions) {
        this.model = model;
        Cautions care = new Cautions();
        care.show(cautions);
        this.beforeAPull = new VBox(2, Labels.whole("Before a pull", "section"), care);
        this.form = new AirForm(model.air());
        this.card = new AirCard(model.air());
        this.stated = new StatedPanel(model);
        this.drop = new DropPanel(model, chooser);
        this.pulls = new PullsPanel(model);
        page.getStyleClass().add("dyno-sheet");
        SheetStyle.on(page);
        chart.getStyleClass().add("power-chart");
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        model.chosenProperty().addListener((of, before, after) -> showChart());
        model.air().typingProperty().addListener((of, before, typing) -> typingAir(typing));
        arrange();
        show();
    }

    /** Which of its three faces the sheet shows. */
    private enum Face {
        EMPTY,
        FILLED,
        AIR
    }

    /** Before the first pull the two things to do stand on top; after it the chart takes the room, or the air being typed. */
    private void arrange() {
        Face wanted =
                !model.anyPull() ? Face.EMPTY : model.air().typingProperty().get() ? Face.AIR : Face.FILLED;
        if (Optional.of(wanted).equals(face)) {
            return;
        }
        face = Optional.of(wanted);
        page.getChildren()
                .setAll(
                        switch (wanted) {
                            case EMPTY -> empty();
                            case FILLED -> filled();
                            case AIR -> new Node[] {form};
                        });
    }

    private Node[] empty() {
        VBox.setVgrow(chart, Priority.ALWAYS);
        return new Node[] {form, drop, notes(), chart};
    }

    private Node[] filled() {
        VBox left = new VBox(10, pulls, drop, card);
        left.getStyleClass().add("dyno-left");
        VBox.setVgrow(pulls, Priority.ALWAYS);
        HBox body = new HBox(20, left, chart);
        HBox.setHgrow(chart, Priority.ALWAYS);
        body.getStyleClass().add("dyno-body");
        VBox.setVgrow(body, Priority.ALWAYS);
        return new Node[] {body, notes()};
    }

    private HBox notes() {
        HBox notes = new HBox(28, stated, beforeAPull);
        HBox.setHgrow(stated, Priority.ALWAYS);
        HBox.setHgrow(beforeAPull, Priority.ALWAYS);
        return notes;
    }

    private void show() {
        arrange();
        pulls.show();
        drop.show();
        form.show();
        card.show();
        stated.show();
        showChart();
    }

    private void typingAir(boolean typing) {
        arrange();
        card.show();
        if (typing) {
            // The letter of the key that opened the form has still to be typed; it must not land in the field.
            Platform.runLater(() -> form.focus(AirEntry.Part.PRESSURE));
        }
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
        if (key.isAltDown()) {
            wayOut(key);
        } else if (key.getCode() == KeyCode.I && key.isShortcutDown()) {
            drop.choose();
            key.consume();
        } else if (!key.isShortcutDown()) {
            plain(key);
        }
    }

    private void wayOut(KeyEvent key) {
        boolean known = key.getCode() == KeyCode.A || key.getCode() == KeyCode.H;
        if (known && form.way(key.getCode().getName())) {
            key.consume();
        }
    }

    private void plain(KeyEvent key) {
        boolean filled = face.filter(shown -> shown == Face.FILLED).isPresent();
        if (key.getCode() == KeyCode.X && filled) {
            pulls.takeOut();
            key.consume();
        } else if (key.getCode() == KeyCode.A && filled) {
            model.air().read();
            key.consume();
        }
    }
}
