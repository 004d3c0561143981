package org.pullproof.ui.shell;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Stage;
import org.pullproof.ui.help.GuidePage;
import org.pullproof.ui.parts.AnswerHead;
import org.pullproof.ui.parts.WindowSteps;
import org.pullproof.ui.search.Found;
import org.pullproof.ui.search.SearchPage;
import org.pullproof.units.Sentence;

/** The window while a session is open: top cells, job rail, the sheet of the stage, next step, foot. */
public final class MainView extends StackPane {
    private static final double LEAST_WIDTH = 1280;
    private static final double LEAST_HEIGHT = 420;

    private final SessionViewModel model;
    private final Map<Stage, Sheet> made = new EnumMap<>(Stage.class);
    private final Function<Stage, Sheet> sheets;
    private final AnswerHead head = new AnswerHead(this::openMethod);
    private final ScrollPane body = new ScrollPane();
    private final BorderPane frame = new BorderPane();
    private final VBox bottom = new VBox();
    private final Rail rail;
    private final NextStepPane next;
    private final ShellActs acts;
    private Optional<Node> over = Optional.empty();
    private Optional<Node> keyboardBefore = Optional.empty();

    /**
     * @param sheets makes the sheet of a stage, asked once for each
     * @param acts what is offered on every sheet
     */
    public MainView(SessionViewModel model, Function<Stage, Sheet> sheets, ShellActs acts) {
        this.model = model;
        this.sheets = sheets;
        this.rail = new Rail(model);
        this.acts = acts;
        this.next = new NextStepPane(model, this::doNextStep);
        frame.setTop(new TopBar(
                model, new TopBar.Acts(this::openPaper, this::openValues, this::openVersions, this::openSearch)));
        frame.setLeft(rail);
        frame.setCenter(sheetFrame());
        frame.setRight(next);
        bottom.getChildren().setAll(new SaidOnce(model, acts.copy()), new Foot(model));
        frame.setBottom(bottom);
        getChildren().setAll(frame);
        model.appraisalProperty().addListener((of, before, after) -> showAnswer());
        model.stageProperty().addListener((of, before, after) -> showSheet());
        WindowSteps.follow(this);
        frame.setMinSize(LEAST_WIDTH, LEAST_HEIGHT);
        showSheet();
    }

    private VBox sheetFrame() {
        body.setFitToWidth(true);
        body.setFitToHeight(true);
        body.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        body.setFocusTraversable(false);
        VBox.setVgrow(body, Priority.ALWAYS);
        VBox frame = new VBox(head, body);
        frame.getStyleClass().add("sheet-frame");
        return frame;
    }

    private void showSheet() {
        showPage();
        Sheet sheet = sheet();
        VBox padded = new VBox(sheet.node());
        VBox.setVgrow(sheet.node(), Priority.ALWAYS);
        padded.getStyleClass().add("sheet-body");
        body.setContent(padded);
        body.setVvalue(0);
    }

    private Sheet sheet() {
        return sheet(model.stageProperty().get());
    }

    private Sheet sheet(Stage stage) {
        return made.computeIfAbsent(stage, asked -> {
            Sheet sheet = sheets.apply(asked);
            sheet.page().addListener((of, before, after) -> showPage());
            return sheet;
        });
    }

    /** Makes the sheets that were not looked at yet, one after another between the events of the window, while it is shown. */
    public void makeOtherSheets() {
        Arrays.stream(Stage.values())
                .filter(stage -> isShown() && !made.containsKey(stage))
                .findFirst()
                .ifPresent(stage -> Platform.runLater(() -> {
                    sheet(stage);
                    makeOtherSheets();
                }));
    }

    private boolean isShown() {
        return Optional.ofNullable(getScene())
                .map(Scene::getWindow)
                .filter(Window::isShowing)
                .isPresent();
    }

    private void showAnswer() {
        Stage stage = model.stageProperty().get();
        if (sheet().page().getValue() instanceof SheetPage.Headed own) {
            head.show(own.question(), own.answer());
        } else {
            head.show(stage.question(), answer(model.appraisal(), stage));
        }
    }

    /** A page of the whole window hides everything else, so the keyboard cannot get there; search lets it be seen. */
    private void showPage() {
        showAnswer();
        Optional<Node> whole = wholePage();
        frame.setVisible(whole.isEmpty() || whole.get() instanceof SearchPage);
        getChildren().setAll(frame);
        whole.ifPresent(page -> {
            getChildren().add(page);
            page.requestFocus();
        });
    }

    private Optional<Node> wholePage() {
        return over.or(() -> sheet().page().getValue() instanceof SheetPage.Whole page
                ? Optional.of(page.node())
                : Optional.empty());
    }

    /** Lays a page over everything until {@link #uncover()}. */
    private void cover(Node page) {
        if (over.isEmpty()) {
            keyboardBefore = Optional.ofNullable(getScene()).map(Scene::getFocusOwner);
        }
        over = Optional.of(page);
        showPage();
    }

    /** Takes the page away and gives the keyboard back to where it was. */
    private void uncover() {
        over = Optional.empty();
        showPage();
        keyboardBefore
                .filter(before -> before.getScene() == getScene())
                .ifPresentOrElse(Node::requestFocus, this::focusSheet);
    }

    /** Lays a strip over the foot. */
    public void addStrip(Node strip) {
        bottom.getChildren().add(0, strip);
    }

    /** Opens the page of what can be printed. */
    void openPaper() {
        cover(acts.paper().apply(this::uncover));
    }

    /** Opens the page of the values that the program judges by. */
    void openValues() {
        cover(acts.values().apply(this::uncover));
    }

    /** Opens the page of what is kept of earlier sittings, over everything else. */
    void openVersions() {
        cover(acts.versions().apply(this::uncover));
    }

    /** Opens search over the session and everything that can be done. */
    void openSearch() {
        cover(new SearchPage(() -> new EverythingToFind(this, model, acts).list(), this::uncover));
    }

    /** Opens the guide at the chapter of the sheet being shown. */
    void openGuide() {
        openGuide(sheet().heading().orElse(acts.guide().headingOf(sheet().stage())));
    }

    /** Opens the guide where it tells how the figures of the sheet being shown are made. */
    void openMethod() {
        openGuide(acts.guide().methodOf(sheet().stage()));
    }

    /** Opens the guide at a heading. */
    void openGuide(String heading) {
        cover(new GuidePage(acts.guide(), heading, this::uncover));
    }

    /** Opens a sheet and presses one of its own keys. */
    void press(Stage stage, KeyCode code, boolean control) {
        open(stage);
        sheet().key(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, control, false, false));
    }

    /** What the sheets themselves offer to search; choosing opens the sheet first. */
    List<Found> offers() {
        return Arrays.stream(Stage.values())
                .map(this::sheet)
                .flatMap(sheet -> sheet.offers().stream()
                        .map(found -> Found.act(found.title(), found.detail(), found.key(), () -> {
                            open(sheet.stage());
                            found.chosen().run();
                        })))
                .toList();
    }

    ShellActs acts() {
        return acts;
    }

    /** Whether a page of the whole window has the keyboard to itself. */
    boolean isCovered() {
        return wholePage().isPresent();
    }

    /** Whether that page is one of the sheet itself, such as fender mode. */
    boolean isCoveredByItsSheet() {
        return over.isEmpty() && isCovered();
    }

    private static Sentence answer(Appraisal appraisal, Stage stage) {
        return switch (stage) {
            case CAR -> appraisal.carAnswer();
            case HEALTH -> appraisal.health().answer();
            case TUNE_UP -> appraisal.tuneUp().answer();
            case DYNO_DAY -> appraisal.dyno().answer();
            case CHANGES -> appraisal.changes().answer();
            case WORTH_IT -> new Sentence("");
        };
    }

    /** Opens a stage and gives its sheet the keyboard. */
    void open(Stage stage) {
        model.stageProperty().set(stage);
        focusSheet();
    }

    void doNextStep() {
        model.goToNextStep();
        focusSheet();
    }

    /** Gives the sheet being shown the keyboard. */
    public void focusSheet() {
        applyCss();
        layout();
        if (!Focus.into(body)) {
            rail.focusChosen();
        }
    }

    /** Hands the keyboard on: rail, sheet, next step, and round. */
    void rotateFocus() {
        if (Focus.isIn(rail)) {
            focusSheet();
        } else if (Focus.isIn(body)) {
            Focus.into(next);
        } else {
            rail.focusChosen();
        }
    }

    /** The sheet being shown. */
    Sheet shown() {
        return sheet();
    }
}
