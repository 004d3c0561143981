package org.pullproof.ui.car;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.controlsfx.control.SearchableComboBox;
import org.jspecify.annotations.Nullable;
import org.pullproof.drawing.EnginePlan;
import org.pullproof.drawing.FiringStrip;
import org.pullproof.engine.Crossfire;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Ignition;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;

/** The engine: which profile, its plan, its firing order, and what the profile says of it. */
final class EnginePanel extends VBox {
    private static final double PLAN_HEIGHT = 226;
    private static final double STRIP_HEIGHT = 52;
    private static final double CAPTION = 118;

    private final CarViewModel model;
    private final SearchableComboBox<EngineProfile> picker = new SearchableComboBox<>();
    private final DrawingView plan = new DrawingView();
    private final DrawingView strip = new DrawingView();
    private final Label intervals = Labels.whole("", "caption");
    private final VBox rows = new VBox();

    EnginePanel(CarViewModel model) {
        super(8);
        this.model = model;
        sized(plan, PLAN_HEIGHT);
        sized(strip, STRIP_HEIGHT);
        picker.getItems().setAll(model.profiles());
        picker.setConverter(new Names());
        picker.setAccessibleText("Engine");
        picker.setMaxWidth(Double.MAX_VALUE);
        picker.valueProperty().addListener((of, before, chosen) -> choose(chosen));
        HBox.setHgrow(picker, Priority.ALWAYS);
        HBox choice = new HBox(12, Labels.whole("Engine", "section"), picker);
        choice.setAlignment(Pos.CENTER_LEFT);
        HBox firing = new HBox(8, Labels.whole("Firing order", "section"), intervals);
        firing.setAlignment(Pos.BASELINE_LEFT);
        getChildren().setAll(choice, plan, firing, strip, rows);
    }

    private static void sized(DrawingView view, double height) {
        view.setMinHeight(height);
        view.setPrefHeight(height);
    }

    private void choose(@Nullable EngineProfile chosen) {
        if (chosen != null) {
            model.choose(chosen);
        }
    }

    void show() {
        EngineProfile profile = model.profile();
        if (!picker.getItems().contains(profile)) {
            picker.getItems().add(0, profile);
        }
        picker.setValue(profile);
        plan.show((width, height) -> EnginePlan.of(profile, apart(profile), width, height));
        strip.show((width, height) -> FiringStrip.of(profile.firing(), width, height));
        intervals.setText(FiringStrip.words(profile.firing()));
        boolean assumed = profile.geometry().assumed();
        rows.getChildren()
                .setAll(
                        row("Ignition", model.ignition(), false),
                        row("Fuel system", model.fuelSystem(), false),
                        row("Wires to part", model.wires(), false),
                        row("Bore × stroke", model.boreAndStroke(), assumed),
                        row("Compression ratio", model.compressionRatio(), assumed),
                        row("Plugs", model.plugs(), false));
    }

    private static List<EnginePlan.Pair> apart(EngineProfile profile) {
        if (profile.ignition() == Ignition.COIL_ON_PLUG) {
            return List.of();
        }
        return Crossfire.pairs(profile).stream()
                .filter(Crossfire.Pair::adjacent)
                .map(pair -> new EnginePlan.Pair(pair.first(), pair.second()))
                .toList();
    }

    private static Node row(String caption, String words, boolean assumed) {
        Label name = Labels.whole(caption, "caption");
        name.setMinWidth(CAPTION);
        Label text = Labels.wrapped(words);
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox row = new HBox(8, name, text);
        if (assumed) {
            row.getChildren().add(Labels.whole("assumed", "tag", "assumed"));
        }
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().addAll("fact-row", "engine-row");
        return row;
    }

    private static final class Names extends StringConverter<EngineProfile> {
        @Override
        public String toString(@Nullable EngineProfile profile) {
            return profile == null ? "" : profile.name();
        }

        @Override
        public @Nullable EngineProfile fromString(String name) {
            return null;
        }
    }
}
