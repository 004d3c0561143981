package org.pullproof.ui.health;

import java.util.List;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.health.TestKind;
import org.pullproof.ui.parts.CopyKey;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.shell.Sheet;

/** Is this engine sound? Tiles, the chosen cylinder with its readings and entry, rules, the whole engine. */
public final class HealthSheet implements Sheet {
    private static final List<String> BEGIN = List.of(
            "Type the drop of each cylinder in the balance test; it needs the engine running and nothing removed.",
            "With the plugs out, type compression, dry first. Strokes and throttle are kept from one cylinder to the next.",
            "Enter keeps a reading and goes on to the next cylinder.");

    private final HealthViewModel model;
    private final Function<TestKind, List<String>> cautionsOf;
    private final VBox page = new VBox();
    private final EngineTiles tiles;
    private final EntryForm form;
    private final ReadingsTable readings;
    private final CandidatesList candidates = new CandidatesList();
    private final RulesList rules = new RulesList();
    private final EngineStrip strip;
    private final Label chosen = Labels.whole("", "section");
    private final Label chosenWords = Labels.wrapped("", "caption");

    /**
     * @param cautionsOf the cautions that stand at a test
     */
    public HealthSheet(HealthViewModel model, Function<TestKind, List<String>> cautionsOf) {
        this.model = model;
        this.cautionsOf = cautionsOf;
        this.form = new EntryForm(model);
        this.tiles = new EngineTiles(model, this::type);
        this.readings = new ReadingsTable(model);
        this.strip = new EngineStrip(model, this::typeStarter);
        page.getStyleClass().add("health-sheet");
        SheetStyle.on(page);
        page.getChildren().setAll(tiles, body(), strip);
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        model.entry().cylinderProperty().addListener((of, before, after) -> show());
        model.entry().testProperty().addListener((of, before, after) -> show());
        show();
    }

    private Node body() {
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox title = new HBox(8, chosen, chosenWords, space, form.keepButton());
        title.setAlignment(Pos.CENTER_LEFT);
        VBox left = new VBox(title, form, readings);
        left.getStyleClass().add("chosen-cylinder");
        HBox.setHgrow(left, Priority.ALWAYS);
        HBox body = new HBox(24, left, why());
        body.getStyleClass().add("health-body");
        VBox.setVgrow(body, Priority.ALWAYS);
        return body;
    }

    /** Reasons and rules scroll by themselves, so that the strip below stays in sight. */
    private Node why() {
        ScrollPane why = new ScrollPane(new VBox(candidates, rules));
        why.setFitToWidth(true);
        why.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        why.setAccessibleText("Why, and the rules of compression");
        why.getStyleClass().add("why");
        return why;
    }

    private void type(int cylinder) {
        model.entry().cylinderProperty().set(cylinder);
        form.type();
    }

    private void typeStarter() {
        model.entry().testProperty().set(TestKind.STARTER_CURRENT);
        form.type();
    }

    private void show() {
        int cylinder = model.entry().cylinderProperty().get();
        Tile tile = model.tile(cylinder);
        chosen.setText(model.ofWholeEngine() ? "Whole engine" : "Cylinder " + cylinder);
        chosenWords.setText(model.ofWholeEngine() ? "" : tile.words());
        tiles.show();
        readings.show();
        strip.show();
        candidates.show(model.model().appraisal().health().faults(), model.ofWholeEngine() ? 0 : cylinder);
        List<String> cautions = cautionsOf.apply(model.entry().testProperty().get());
        if (model.anythingRead()) {
            rules.show(model.model().appraisal().health(), cautions, model.testBegun());
        } else {
            rules.showEmpty(BEGIN, cautions);
        }
    }

    @Override
    public Stage stage() {
        return Stage.HEALTH;
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
