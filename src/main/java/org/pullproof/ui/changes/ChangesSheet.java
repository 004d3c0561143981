package org.pullproof.ui.changes;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.drawing.ResidualChart;
import org.pullproof.session.About;
import org.pullproof.ui.parts.CopyKey;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.PictureStrip;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.parts.Shown;
import org.pullproof.ui.shell.Sheet;

/** Which adjustment really made power? The ledger, the next change, and what the setups do not explain. */
public final class ChangesSheet implements Sheet {
    private static final String BEGIN =
            "Name the setup the engine is in, pull it two or three times, change one thing and give"
                    + " the new state a name, pull again, and go back to the first. Each change then stands here with its interval.";

    private final ChangesViewModel model;
    private final VBox page = new VBox();
    private final LedgerView ledger;
    private final Looks looks;
    private final ChangeDetail detail;
    private final DrawingView residuals = new DrawingView();
    private final VBox empty = new VBox(Labels.whole("No change yet", "title"), Labels.wrapped(BEGIN, "second"));
    private final Label measured = Labels.wrapped(
            "A pull has no air: all calls stand on measured power, not on corrected power.", "caption", "red");
    private final VBox unexplained = new VBox();
    private final Label chosen = Labels.wrapped("", "section");
    private final PictureStrip pictures;
    private final Label pictured = Labels.whole("", "caption");
    private final Label scatter = Labels.wrapped("", "caption");

    /**
     * @param cautions that stand at a change
     * @param pictures photographs of the setups
     */
    public ChangesSheet(ChangesViewModel model, List<String> cautions, PictureStrip.Acts pictures) {
        this.model = model;
        this.ledger = new LedgerView(model);
        this.looks = new Looks(model, cautions);
        this.detail = new ChangeDetail(model);
        this.pictures = new PictureStrip(About.setup(model.pictured()), pictures);
        ledger.onChosen(this::showChosen);
        page.getStyleClass().add("changes-sheet");
        SheetStyle.on(page);
        empty.getStyleClass().add("empty");
        residuals.getStyleClass().add("residual-chart");
        VBox.setVgrow(residuals, Priority.ALWAYS);
        unexplained
                .getChildren()
                .setAll(
                        new HBox(8, Labels.whole("What the setups do not explain", "section"), scatter),
                        residuals,
                        chosen,
                        detail,
                        new HBox(8, pictured, this.pictures));
        HBox below = new HBox(22, looks, unexplained);
        below.getStyleClass().add("below-ledger");
        HBox.setHgrow(unexplained, Priority.ALWAYS);
        VBox.setVgrow(below, Priority.ALWAYS);
        page.getChildren().setAll(empty, measured, ledger, below);
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        show();
    }

    private void show() {
        boolean none = model.rows().isEmpty();
        Shown.only(empty, none);
        Shown.only(ledger, !none);
        Shown.only(measured, !none && model.ledger().onMeasured());
        scatter.setText(model.scatterWords());
        ledger.show();
        looks.show();
        showChosen();
        residuals.show((width, height) -> ResidualChart.of(model.ledger(), model.setups(), width, height));
    }

    /** Shows what belongs to the chosen line of the ledger: its curve and its pulls. */
    private void showChosen() {
        Shown.only(chosen, !model.chosenName().isEmpty());
        Shown.only(detail, !model.chosenName().isEmpty());
        chosen.setText("Pulls of " + model.chosenName());
        looks.showBand();
        detail.show();
        pictured.setText("Setup " + model.pictured());
        pictures.show(About.setup(model.pictured()));
    }

    @Override
    public Stage stage() {
        return Stage.CHANGES;
    }

    @Override
    public Node node() {
        return page;
    }

    @Override
    public void key(KeyEvent key) {
        CopyKey.copy(key, model::table);
    }
}
