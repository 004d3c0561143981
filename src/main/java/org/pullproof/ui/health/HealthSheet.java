package org.pullproof.ui.health;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.health.TestKind;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Choice;
import org.pullproof.ui.parts.CopyKey;
import org.pullproof.ui.parts.PictureStrip;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.search.Found;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.ui.shell.SheetPage;

/** Is this engine sound? Tiles, the chosen cylinder with its readings and entry, rules, the whole engine. */
public final class HealthSheet implements Sheet {
    private static final double WIDE = 1000;
    private static final KeyCombination PASTE = new KeyCodeCombination(KeyCode.V, KeyCombination.SHORTCUT_DOWN);

    private final HealthViewModel model;
    private final FenderViewModel fender;
    private final TdcViewModel tdc;
    private final Consumer<TestKind> tally;
    private final ReadOnlyObjectWrapper<SheetPage> shown = new ReadOnlyObjectWrapper<>(new SheetPage.Own());
    private final VBox page = new VBox();
    private final FenderView fenderView;
    private final TdcPage tdcPage;
    private final HBox actions;
    private final Choice<ReadingsShown> shows;
    private final EngineTiles tiles;
    private final EntryBox entry;
    private final AmountBox amount;
    private final SideBySide sideBySide;
    private final EngineStrip strip;

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
        this.tally = tally;
        this.fenderView = new FenderView(fender);
        this.tdcPage = new TdcPage(tdc, this::showOwn, this::typeLeak);
        this.entry = new EntryBox(model, cautionsOf, pictures);
        this.amount = new AmountBox(model);
        this.sideBySide = new SideBySide(model);
        this.shows = new Choice<>("Readings", Arrays.asList(ReadingsShown.values()), model::words);
        this.tiles = new EngineTiles(model, this::type);
        this.strip = new EngineStrip(model, this::typeStarter);
        page.getStyleClass().add("health-sheet");
        SheetStyle.on(page);
        this.actions = actions();
        showOwn();
        fender.phaseProperty().addListener((of, before, after) -> showFender());
        tdc.nowProperty().addListener((of, before, after) -> headTdc());
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        model.entry().cylinderProperty().addListener((of, before, after) -> show());
        model.entry().testProperty().addListener((of, before, after) -> show());
        model.shownProperty().addListener((of, before, after) -> layOut());
        sideBySide.managedProperty().bind(page.widthProperty().greaterThanOrEqualTo(WIDE));
        sideBySide.visibleProperty().bind(sideBySide.managedProperty());
        show();
    }

    private HBox actions() {
        Button atTheCar = Actions.plain("Fender mode", "F2");
        atTheCar.setOnAction(pressed -> openFender());
        Button guide = Actions.plain("TDC guide", "F3");
        guide.setOnAction(pressed -> openTdc());
        Button blank = Actions.plain("Tally sheet", "F4");
        blank.setOnAction(pressed -> printTally());
        shows.onChosen(model.shownProperty()::set);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        // they have keys of their own; Tab begins at the tiles, where a figure is typed
        shows.takesNoTab();
        List.of(atTheCar, guide, blank).forEach(button -> button.setFocusTraversable(false));
        HBox line = new HBox(8, shows, space, atTheCar, guide, blank);
        line.getStyleClass().add("health-tools");
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    /** The strip of the whole engine stands where it is read; the readings of a cylinder have its room else. */
    private void layOut() {
        ReadingsShown group = model.shownProperty().get();
        Region below = group == ReadingsShown.ALL ? amount : entry;
        VBox.setVgrow(below, Priority.ALWAYS);
        page.getChildren().setAll(actions, tiles, below);
        if (group == ReadingsShown.ALL || group == ReadingsShown.WHOLE_ENGINE) {
            page.getChildren().add(strip);
        }
        if (group == ReadingsShown.ALL) {
            page.getChildren().add(sideBySide);
        }
        show();
    }

    private void type(int cylinder) {
        model.entry().cylinderProperty().set(cylinder);
        model.showEntry();
        entry.type();
    }

    private void typeStarter() {
        model.entry().testProperty().set(TestKind.STARTER_CURRENT);
        model.showEntry();
        entry.type();
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
        layOut();
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
        shows.say(model::words);
        shows.show(Optional.of(model.shownProperty().get()));
        tiles.show();
        strip.show();
        entry.show();
        amount.show();
        sideBySide.show();
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
    public List<Found> offers() {
        return IntStream.rangeClosed(1, model.engine().cylinders())
                .boxed()
                .flatMap(this::offersAt)
                .toList();
    }

    private Stream<Found> offersAt(int cylinder) {
        Stream<Found> tests = Stream.of(TestKind.COMPRESSION_DRY, TestKind.COMPRESSION_WET, TestKind.LEAKDOWN)
                .map(test -> Found.act(
                        "Type at cylinder " + cylinder + ": " + test.words(),
                        "Health, fender mode",
                        "",
                        () -> fender.open(test, OptionalInt.of(cylinder))));
        Found turn = Found.act("Turn to cylinder " + cylinder + " in the TDC guide", "Health", "", () -> {
            model.entry().cylinderProperty().set(cylinder);
            openTdc();
        });
        return Stream.concat(tests, Stream.of(turn));
    }

    @Override
    public Optional<String> heading() {
        return isTdcOpen()
                ? Optional.of("The TDC guide, F3")
                : Optional.of("At the car: fender mode, F2").filter(heading -> shown.get() instanceof SheetPage.Whole);
    }

    @Override
    public void key(KeyEvent key) {
        boolean used = true;
        switch (key.getCode()) {
            case F2 -> openFenderFromHere();
            case F3 -> openTdc();
            case F4 -> printTally();
            case ESCAPE -> used = leaveTdc() || leaveEntry();
            default -> used = choose(key);
        }
        if (used) {
            key.consume();
        } else if (PASTE.match(key)) {
            paste(key);
        } else {
            CopyKey.copy(key, model::table);
        }
    }

    /** A table on the clipboard is read as readings; a single word or figure is left to the field. */
    private void paste(KeyEvent key) {
        String text =
                Optional.ofNullable(Clipboard.getSystemClipboard().getString()).orElse("");
        boolean elsewhere = key.getTarget() instanceof TextInputControl field && !"entry-value".equals(field.getId());
        if (!elsewhere && !isTdcOpen() && PastedReadings.isTable(text)) {
            model.showEntry();
            try {
                model.paste(text);
            } catch (IllegalArgumentException refused) {
                entry.refuse(String.valueOf(refused.getMessage()));
            }
            key.consume();
        }
    }

    /** A letter chooses the readings shown, but only while no word is typed. */
    private boolean choose(KeyEvent key) {
        Optional<ReadingsShown> chosen = Arrays.stream(ReadingsShown.values())
                .filter(group -> group.key().equals(key.getCode().getName()))
                .filter(group -> !key.isShortcutDown() && !key.isAltDown() && !isTdcOpen())
                .findFirst();
        chosen.ifPresent(model.shownProperty()::set);
        return chosen.isPresent();
    }

    private boolean leaveEntry() {
        boolean entered = model.shownProperty().get() != ReadingsShown.ALL && model.anythingRead();
        if (entered) {
            model.shownProperty().set(ReadingsShown.ALL);
            tiles.tile(model.entry().cylinderProperty().get()).requestFocus();
        }
        return entered;
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
