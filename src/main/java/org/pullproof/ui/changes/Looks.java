package org.pullproof.ui.changes;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.pullproof.drawing.BandChart;
import org.pullproof.drawing.SetupTree;
import org.pullproof.drawing.SweepChart;
import org.pullproof.ui.parts.Choice;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Shown;

/** The left half below the ledger: one of five looks at the changes, the next change to make first. */
final class Looks extends VBox {
    /** What stands there. */
    enum Look {
        CHANGE("Change one thing"),
        SWEEP("Sweep"),
        SPEEDS("Over rpm"),
        SETUPS("Setups"),
        PLAN("Plan");

        private final String words;

        Look(String words) {
            this.words = words;
        }
    }

    private static final String NO_SWEEP =
            "A numeric setting tried at three levels or more stands here with its response. Type"
                    + " the level with the change, such as timing=32deg.";
    private static final String NO_BAND =
            "Choose a change that has figures; its difference over engine speed stands here.";

    private final ChangesViewModel model;
    private final Choice<Look> choice =
            new Choice<>("Shown below the ledger", List.of(Look.values()), look -> look.words);
    private final Map<Look, Node> parts = new EnumMap<>(Look.class);
    private final ChangeForm form;
    private final VBox sweeps = new VBox(6);
    private final DrawingView band = new DrawingView();
    private final Label bandWords = Labels.wrapped("", "caption");
    private final DrawingView tree = new DrawingView();
    private Look look = Look.CHANGE;

    Looks(ChangesViewModel model, List<String> cautions) {
        this.model = model;
        this.form = new ChangeForm(model, cautions);
        getStyleClass().add("change-looks");
        band.getStyleClass().add("band-chart");
        parts.put(Look.CHANGE, form);
        parts.put(Look.SWEEP, sweeps);
        parts.put(Look.SPEEDS, new VBox(2, bandWords, band));
        parts.put(Look.SETUPS, tree);
        parts.put(Look.PLAN, new PlanForm(model));
        choice.onChosen(this::choose);
        getChildren().add(choice);
        getChildren().addAll(parts.values());
        choose(look);
    }

    private void choose(Look chosen) {
        look = chosen;
        choice.show(Optional.of(chosen));
        parts.forEach((which, part) -> Shown.only(part, which == chosen));
    }

    void show() {
        form.show();
        showSweeps();
        showBand();
        tree.setMinHeight(SetupTree.ROW * (model.setups().size() + 1));
        tree.show((width, height) -> SetupTree.of(
                model.setups(),
                model.model().session().changes(),
                model.model().session().presentSetup(),
                model.ledger(),
                width));
    }

    private void showSweeps() {
        sweeps.getChildren().clear();
        if (model.ledger().sweeps().isEmpty()) {
            sweeps.getChildren().add(Labels.wrapped(NO_SWEEP, "second"));
        }
        model.ledger().sweeps().forEach(sweep -> {
            DrawingView chart = new DrawingView((width, height) -> SweepChart.of(sweep, width, height));
            chart.getStyleClass().add("band-chart");
            sweeps.getChildren().addAll(Labels.wrapped(sweep.sentence()), chart);
        });
    }

    void showBand() {
        Shown.only(band, model.chosenBand().isPresent());
        bandWords.setText(model.chosenBand()
                .map(there -> model.chosenName() + ", % over engine speed, with a band that holds"
                        + " the whole curve nine times in ten")
                .orElse(NO_BAND));
        model.chosenBand().ifPresent(there -> band.show((width, height) -> BandChart.of(there, width, height)));
    }
}
