package org.pullproof.ui.dynoday;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Node;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.CopyKey;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.ui.shell.SheetPage;
import org.pullproof.units.Sentence;

/** What does it make? The air, the pulls and their chart. */
public final class DynoDaySheet implements Sheet {
    private static final String QUESTION = "May this car be loaded today?";

    private final DynoDayViewModel model;
    private final DayViewModel day;
    private final VBox page = new VBox();
    private final AirForm form;
    private final AirCard card;
    private final StatedPanel stated;
    private final DropPanel drop;
    private final PullsPanel pulls;
    private final ChartViewModel look;
    private final CurvesPanel chart;
    private final VBox beforeAPull;
    private final DayPage dayPage;
    private final DayLine dayLine;
    private final ReadOnlyObjectWrapper<SheetPage> shown = new ReadOnlyObjectWrapper<>(new SheetPage.Own());
    private Optional<Face> face = Optional.empty();
    private Optional<MappingPage> mapping = Optional.empty();

    /**
     * @param cautions that stand at a pull
     */
    public DynoDaySheet(
            DynoDayViewModel model,
            DayViewModel day,
            WatchViewModel watch,
            PullFileChooser chooser,
            PictureSave saver,
            List<String> cautions) {
        this.model = model;
        this.look = new ChartViewModel(model);
        this.chart = new CurvesPanel(look, saver);
        this.day = day;
        this.dayPage = new DayPage(day);
        this.dayLine = new DayLine(day);
        Cautions care = new Cautions();
        care.show(cautions);
        this.beforeAPull = new VBox(2, Labels.whole("Before a pull", "section"), care);
        this.form = new AirForm(model.air());
        this.card = new AirCard(model.air());
        this.stated = new StatedPanel(model);
        this.drop = new DropPanel(model, watch, chooser);
        this.pulls = new PullsPanel(model);
        page.getStyleClass().add("dyno-sheet");
        SheetStyle.on(page);
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        model.chosenProperty().addListener((of, before, after) -> showChart());
        model.air().typingProperty().addListener((of, before, typing) -> typingAir(typing));
        day.shownProperty().addListener((of, before, after) -> turned(after));
        model.takingIn().mappingProperty().addListener((of, before, after) -> asked(after));
        arrange();
        show();
    }

    /** Which of its faces the sheet shows. */
    private enum Face {
        EMPTY,
        FILLED,
        AIR,
        DAY,
        MAPPING
    }

    /** Before the first pull the two things to do stand on top; after it the chart takes the room, or the air being typed. */
    private void arrange() {
        Face wanted = wanted();
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
                            case DAY -> new Node[] {dayPage};
                            case MAPPING ->
                                mapping.<Node[]>map(page -> new Node[] {page}).orElse(new Node[0]);
                        });
    }

    private Face wanted() {
        if (model.takingIn().mappingProperty().get().isPresent()) {
            return Face.MAPPING;
        }
        if (day.shownProperty().get()) {
            return Face.DAY;
        }
        if (!model.anyPull()) {
            return Face.EMPTY;
        }
        return model.air().typingProperty().get() ? Face.AIR : Face.FILLED;
    }

    private Node[] empty() {
        VBox.setVgrow(chart, Priority.ALWAYS);
        return new Node[] {dayLine, form, drop, notes(), chart};
    }

    private Node[] filled() {
        VBox left = new VBox(10, pulls, drop, card);
        left.getStyleClass().add("dyno-left");
        VBox.setVgrow(pulls, Priority.ALWAYS);
        HBox body = new HBox(20, left, chart);
        HBox.setHgrow(chart, Priority.ALWAYS);
        body.getStyleClass().add("dyno-body");
        VBox.setVgrow(body, Priority.ALWAYS);
        return new Node[] {dayLine, body, notes()};
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
        dayLine.show();
        showDay();
        showChart();
    }

    private void turned(boolean toTheDay) {
        show();
        if (toTheDay) {
            Platform.runLater(dayPage::focusFirst);
        }
    }

    /** Another file to be asked about, or none any more. */
    private void asked(Optional<MappingViewModel> about) {
        mapping = about.map(table -> new MappingPage(
                table, model.model().appraisal().figures(), model.takingIn()::takeAsTold, model.takingIn()::leave));
        face = Optional.empty();
        show();
        mapping.ifPresent(page -> Platform.runLater(page::focusFirst));
    }

    private void showDay() {
        if (face.equals(Optional.of(Face.DAY))) {
            dayPage.show();
        }
        shown.set(head());
    }

    private SheetPage head() {
        return switch (face.orElse(Face.EMPTY)) {
            case DAY -> new SheetPage.Headed(QUESTION, day.gate().answer());
            case MAPPING ->
                new SheetPage.Headed(
                        "What are the columns of this file?",
                        new Sentence(model.takingIn()
                                .mappingProperty()
                                .get()
                                .map(about -> "**" + about.table().file().getFileName()
                                        + "** does not say clearly which columns are engine speed and power.")
                                .orElse("")));
            default -> new SheetPage.Own();
        };
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
        look.refresh();
        pulls.refreshLines();
    }

    @Override
    public Stage stage() {
        return Stage.DYNO_DAY;
    }

    @Override
    public ReadOnlyObjectProperty<SheetPage> page() {
        return shown.getReadOnlyProperty();
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
            files(key.isShiftDown());
            key.consume();
        } else if (key.getCode() == KeyCode.S && key.isShortcutDown() && key.isShiftDown()) {
            chart.save();
            key.consume();
        } else if (!key.isShortcutDown()) {
            plain(key);
        }
    }

    private void files(boolean watched) {
        if (watched) {
            drop.watchOrStop();
        } else {
            drop.choose();
        }
    }

    private void wayOut(KeyEvent key) {
        boolean known = key.getCode() == KeyCode.A || key.getCode() == KeyCode.H;
        if (known && form.way(key.getCode().getName())) {
            key.consume();
        }
    }

    private void plain(KeyEvent key) {
        // elsewhere the arrows belong to what has the keyboard
        if (key.getTarget() == chart.view() || key.getTarget() instanceof TableView) {
            chart.view().key(key);
        }
        if (key.isConsumed()) {
            return;
        }
        act(key.getCode()).ifPresent(act -> {
            act.run();
            key.consume();
        });
    }

    /** What a letter alone does on the face that is shown. */
    private Optional<Runnable> act(KeyCode code) {
        Face on = face.orElse(Face.EMPTY);
        if (on == Face.MAPPING) {
            return code == KeyCode.ESCAPE ? Optional.of(model.takingIn()::leave) : Optional.empty();
        }
        if (on == Face.DAY) {
            return code == KeyCode.ESCAPE
                    ? Optional.of(() -> day.shownProperty().set(false))
                    : Optional.empty();
        }
        if (code == KeyCode.G) {
            return Optional.of(() -> day.shownProperty().set(true));
        }
        Map<KeyCode, Runnable> filled = Map.of(KeyCode.X, pulls::takeOut, KeyCode.A, model.air()::read);
        return on == Face.FILLED ? Optional.ofNullable(filled.get(code)) : Optional.empty();
    }
}
