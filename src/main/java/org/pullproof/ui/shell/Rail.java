package org.pullproof.ui.shell;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.advice.StageProgress;

/** The job rail: the six stages and how far each is. */
final class Rail extends VBox {
    private final List<StageTab> tabs = new ArrayList<>();
    private final SessionViewModel model;

    Rail(SessionViewModel model) {
        this.model = model;
        getStyleClass().add("rail");
        ToggleGroup group = new ToggleGroup();
        for (Stage stage : Stage.values()) {
            tabs.add(tab(stage, group));
        }
        getChildren().setAll(tabs);
        model.appraisalProperty().addListener((of, before, after) -> show(after.stages()));
        model.stageProperty().addListener((of, before, after) -> tab(after).setSelected(true));
        show(model.appraisal().stages());
        tab(model.stageProperty().get()).setSelected(true);
    }

    private StageTab tab(Stage stage, ToggleGroup group) {
        StageTab tab = new StageTab(stage, tabs.size() + 1);
        tab.setToggleGroup(group);
        tab.setOnAction(pressed -> {
            // pressing the open stage again does not close it
            group.selectToggle(tab);
            model.stageProperty().set(stage);
        });
        return tab;
    }

    private StageTab tab(Stage stage) {
        return tabs.stream().filter(tab -> tab.stage() == stage).findFirst().orElseThrow();
    }

    private void show(List<StageProgress> stages) {
        stages.forEach(progress -> tab(progress.stage()).show(progress));
    }

    void focusChosen() {
        tab(model.stageProperty().get()).requestFocus();
    }
}
