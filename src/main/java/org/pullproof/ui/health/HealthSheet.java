package org.pullproof.ui.health;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.health.TestKind;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CopyKey;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.PictureStrip;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.ui.shell.SheetPage;

/** Is this engine sound? Tiles, the chosen cylinder with its readings and entry, rules, the whole engine. */
public final class HealthSheet implements Sheet {
    private static final List<String> BEGIN = List.of(
            "Type the drop of each cylinder in the balance test; it needs the engine running and nothing removed.",
            "With the plugs out, type compression, dry first. Strokes and throttle are kept from one cylinder to the next.",
            "Enter keeps a reading and goes on to the next cylinder.",
            "At the car, F2 opens fender mode: one number, big, by keys alone.");

    private final HealthViewModel model;
    private final FenderViewModel fender;
    private final TdcViewModel tdc;
    private final Function<TestKind, List<String>> cautionsOf;
    private final Consumer<TestKind> tally;
    private final ReadOnlyObjectWrapper<SheetPage> shown = new ReadOnlyObjectWrapper<>(new SheetPage.Own());
    private final VBox page = new VBox();
    private final FenderView fenderView;
    private final TdcPage tdcPage;
    private final HBox actions;
    private final Node body;
    private final Label progress = Labels.wrapped("", "caption");
    private final EngineTiles tiles;
    private final EntryForm form;
    private final ReadingsTable readings;
    private final CandidatesList candidates = new CandidatesList();
    private final RulesList rules = new RulesList();
    private final EngineStrip strip;
    private final PictureStrip pictures;
    private final Label chosen = Labels.whole("", "section");
    private final Label chosenWords = Labels.wrapped("", "caption");

    /**
     * @param fender types readings at the car
     * @param tdc tells where the crank stands
     * @param cautionsOf the cautions that stand at a test
     * @param tally makes the printed blank of a test
     * @param pictures photographs of cylinders, plugs and what a borescope shows
     */
    public HealthSheet(
            HealthViewModel model,
            FenderViewModel fender,
            TdcViewModel tdc,
            Function<TestKind, List<String>> cautionsOf,
            Consumer<TestKind> tally,
            PictureStrip.Acts pictures) {
        this.model = model;
        this.fender = fender;
        this.tdc = tdc;
        this.cautionsOf = cautionsOf;
        this.tally = tally;
        this.fenderView = new FenderView(fender);
        this.tdcPage = new TdcPage(tdc, this::showOwn, this::typeLeak);
        this.pictures = new PictureStrip(model.pictured(), pictures);
        this.form = new EntryForm(model);
        this.tiles = new EngineTiles(model, this::type);
        this.readings = new ReadingsTable(model);
        this.strip = new EngineStrip(model, this::typeStarter);
        page.getStyleClass().add("health-sheet");
        SheetStyle.on(page);
        this.actions = actions();
        this.body = body();
        showOwn();
        fender.phaseProperty().addListener((of, before, after) -> showFender());
        tdc.nowProperty().addListener((of, before, after) -> headTdc());
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        model.entry().cylinderProperty().addListener((of, before, after) -> show());
        model.entry().testProperty().addListener((of, before, after) -> show());
        show();
    }

    private HBox actions() {
        Button atTheCar = Actions.plain("Fender mode", "F2");
        atTheCar.setOnAction(pressed -> openFender());
        Button guide = Actions.plain("TDC guide", "F3");
        guide.setOnAction(pressed -> openTdc());
        Button blank = Actions.plain("Tally sheet", "F4");
        blank.setOnAction(pressed -> printTally());
        HBox.setHgrow(progress, Priority.ALWAYS);
        progress.setMaxWidth(Double.MAX_VALUE);
        // they have keys of their own; Tab begins at the tiles, where a figure is typed
        List.of(atTheCar, guide, blank).forEach(button -> button.setFocusTraversable(false));
        HBox line = new HBox(8, progress, atTheCar, guide, blank);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    private Node body() {
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox title = new HBox(8, chosen, chosenWords, space, form.keepButton());
        title.setAlignment(Pos.CENTER_LEFT);
        VBox left = new VBox(title, form, readings, pictures);
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

    private void openFender() {
        fender.open(model.entry().testProperty().get(), OptionalInt.empty());
    }

    private void typeLeak(int cylinder) {
        fender.open(TestKind.LEAKDOWN, OptionalInt.of(cylinder));
    }

    private void showFender() {
        boolean open = fender.phaseProperty().get() != FenderViewModel.Phase.CLOSED;
        if (open && !(shown.get() instanceof SheetPage.Whole)) {
            shown.set(new SheetPage.Whole(fenderView));
        } else if (!open) {
            model.entry().testProperty().set(fender.setting().test());
            showOwn();
            tiles.tile(model.entry().cylinderProperty().get()).requestFocus();
        }
    }

    private void openTdc() {
        tdc.stand(model.entry().cylinderProperty().get());
        page.getChildren().setAll(tdcPage);
        headTdc();
        tdcPage.begin();
    }

    private boolean isTdcOpen() {
        return page.getChildren().contains(tdcPage);
    }

    private void headTdc() {
        if (isTdcOpen()) {
            shown.set(new SheetPage.Headed(tdc.question(), tdc.answer()));
        }
    }

    private void showOwn() {
        page.getChildren().setAll(actions, tiles, body, strip);
        shown.set(new SheetPage.Own());
    }

    private void printTally() {
        tally.accept(model.entry().testProperty().get());
    }

    private void show() {
        if (isTdcOpen()) {
            tdc.stand(tdc.nowProperty().get());
            tdcPage.show();
            headTdc();
        }
        progress.setText(model.progress());
        int cylinder = model.entry().cylinderProperty().get();
        Tile tile = model.tile(cylinder);
        chosen.setText(model.ofWholeEngine() ? "Whole engine" : "Cylinder " + cylinder);
        chosenWords.setText(model.ofWholeEngine() ? "" : tile.words());
        tiles.show();
        readings.show();
        pictures.show(model.pictured());
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
    public ObservableValue<SheetPage> page() {
        return shown.getReadOnlyProperty();
    }

    @Override
    public void key(KeyEvent key) {
        boolean used = true;
        switch (key.getCode()) {
            case F2 -> openFenderFromHere();
            case F3 -> openTdc();
            case F4 -> printTally();
            case ESCAPE -> used = leaveTdc();
            default -> used = false;
        }
        if (used) {
            key.consume();
        } else {
            CopyKey.copy(key, model::table);
        }
    }

    private void openFenderFromHere() {
        if (isTdcOpen()) {
            tdcPage.typeReading();
        } else {
            openFender();
        }
    }

    private boolean leaveTdc() {
        boolean open = isTdcOpen();
        if (open) {
            showOwn();
            tiles.tile(model.entry().cylinderProperty().get()).requestFocus();
        }
        return open;
    }
}
