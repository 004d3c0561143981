package org.pullproof.ui.dynoday;

import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.drawing.Drawing;
import org.pullproof.drawing.PowerChart;
import org.pullproof.dyno.Role;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;

/** The curves, what else may be shown of them, and the way to a file. */
final class CurvesPanel extends VBox {
    private static final double EXPORT_WIDTH = 1000;
    private static final double EXPORT_HEIGHT = 800;

    private final ChartViewModel model;
    private final PictureSave saver;
    private final CurvesView view;
    private final FlowPane bar = new FlowPane(8, 4);
    private final Button save = Actions.plain("Save picture", "Ctrl Shift S");
    private final Button whole = Actions.plain("All speeds", "0");

    CurvesPanel(ChartViewModel model, PictureSave saver) {
        this.model = model;
        this.saver = saver;
        this.view = new CurvesView(model);
        getStyleClass().add("curves-panel");
        save.setId("save-picture");
        save.setOnAction(pressed -> save());
        whole.setId("all-speeds");
        whole.setOnAction(pressed -> model.zoomAll());
        VBox.setVgrow(view, Priority.ALWAYS);
        model.panelsProperty().addListener((of, before, after) -> showBar());
        getChildren().setAll(bar, view);
        showBar();
    }

    CurvesView view() {
        return view;
    }

    private void showBar() {
        bar.getChildren().clear();
        if (model.panelsProperty().get().isEmpty()) {
            return;
        }
        if (!model.logged().isEmpty()) {
            bar.getChildren().add(Labels.whole("also", "caption"));
        }
        model.logged().forEach(role -> bar.getChildren().add(toggle(role)));
        if (model.isZoomed()) {
            bar.getChildren().add(whole);
        }
        bar.getChildren().add(save);
    }

    private ToggleButton toggle(Role role) {
        ToggleButton button = new ToggleButton(role.words());
        button.setId("panel-" + role.key());
        button.getStyleClass().add("panel-toggle");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setSelected(model.shows(role));
        button.setOnAction(pressed -> {
            model.toggle(role);
            bar.lookupAll("#panel-" + role.key()).forEach(again -> again.requestFocus());
        });
        return button;
    }

    /** Saves what is looked at, on paper, with its head. */
    void save() {
        saver.save(exported());
    }

    Drawing exported() {
        return PowerChart.of(model.exported(), EXPORT_WIDTH, EXPORT_HEIGHT);
    }
}
