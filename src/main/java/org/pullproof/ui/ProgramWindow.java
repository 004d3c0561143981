package org.pullproof.ui;

import java.io.File;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.stage.DirectoryChooser;
import javafx.stage.Stage;
import org.pullproof.advice.Cautions;
import org.pullproof.app.EditJudgement;
import org.pullproof.app.RecentSession;
import org.pullproof.app.Toolbox;
import org.pullproof.engine.EngineProfile;
import org.pullproof.files.BadFileException;
import org.pullproof.files.Preferences;
import org.pullproof.files.ProgramVersion;
import org.pullproof.report.Paper;
import org.pullproof.ui.car.CarSheet;
import org.pullproof.ui.car.CarViewModel;
import org.pullproof.ui.dynoday.PullFileChooser;
import org.pullproof.ui.help.Guide;
import org.pullproof.ui.kept.KeptPage;
import org.pullproof.ui.kept.KeptViewModel;
import org.pullproof.ui.paper.PaperPage;
import org.pullproof.ui.paper.PaperViewModel;
import org.pullproof.ui.search.Found;
import org.pullproof.ui.shell.FxRunner;
import org.pullproof.ui.shell.Keys;
import org.pullproof.ui.shell.Look;
import org.pullproof.ui.shell.MainView;
import org.pullproof.ui.shell.PictureDesk;
import org.pullproof.ui.shell.SessionServices;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.ui.shell.ShellActs;
import org.pullproof.ui.shell.WindowPictureChooser;
import org.pullproof.ui.start.DemoHints;
import org.pullproof.ui.start.FirstStart;
import org.pullproof.ui.start.NewCar;
import org.pullproof.ui.start.SessionDrop;
import org.pullproof.ui.tuneup.TuneUpSheet;
import org.pullproof.ui.tuneup.TuneUpViewModel;
import org.pullproof.ui.values.DeskValueActs;
import org.pullproof.ui.values.ValuesPage;
import org.pullproof.ui.values.ValuesViewModel;

/** The one window: the title sheet, or a session. */
final class ProgramWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final String STYLE = "/org/pullproof/ui/pullproof.css";

    private final Toolbox tools;
    private final Cautions cautions;
    private final Stage stage;
    private final PullFileChooser pullFiles;
    private final Clock clock;
    private final FxRunner runner = new FxRunner();
    private final Guide guide = Guide.ofTheProgram();
    private final FxRunner weigher = new FxRunner();
    private final Look look;
    private final Scene scene;
    private final WindowMemory memory;
    private final SessionLoader loader;
    private final Sharing sharing;
    private Optional<SessionViewModel> shown = Optional.empty();
    private Optional<Keys> keys = Optional.empty();

    ProgramWindow(Toolbox tools, Cautions cautions, Stage stage, PullFileChooser pullFiles, Clock clock) {
        this.tools = tools;
        this.cautions = cautions;
        this.stage = stage;
        this.pullFiles = pullFiles;
        this.clock = clock;
        Preferences liked = tools.preferences().read().preferences();
        this.look = new Look(liked.units(), liked.night());
        this.loader = new SessionLoader(tools, look);
        this.sharing = new Sharing(tools.share(), runner, () -> stage);
        this.scene = new Scene(new javafx.scene.layout.StackPane(), WIDTH, HEIGHT);
        scene.getStylesheets().add(STYLE);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        look.nightProperty().addListener((of, before, night) -> {
            light(scene.getRoot());
            prefer(preferences -> preferences.withNight(night));
        });
        look.unitsProperty().addListener((of, before, units) -> prefer(preferences -> preferences.withUnits(units)));
        stage.setScene(scene);
        SessionDrop.on(scene, this::open);
        this.memory = new WindowMemory(stage, liked.window());
        memory.restore();
        stage.setOnHiding(closing -> remember());
        stage.setOnHidden(closed -> {
            weigher.close();
            runner.closeAfter(tools.desk()::letGo);
        });
    }

    /** Shows the window with that session, or with the title sheet. */
    void show(Optional<Path> session) {
        firstStart("");
        session.ifPresent(this::open);
        stage.show();
    }

    private void press(KeyEvent key) {
        if (control(KeyCode.L).match(key)) {
            look.otherLight();
            key.consume();
        } else if (control(KeyCode.N).match(key)) {
            newCar();
            key.consume();
        } else if (control(KeyCode.O).match(key)) {
            chooseSession();
            key.consume();
        } else {
            keys.ifPresent(sheet -> sheet.press(key));
        }
    }

    private static KeyCombination control(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
    }

    private void root(Parent root, String title) {
        light(root);
        scene.setRoot(root);
        stage.setTitle(title);
    }

    private void light(Parent root) {
        root.getStyleClass().remove("night");
        if (look.nightProperty().get()) {
            root.getStyleClass().add("night");
        }
    }

    private void prefer(UnaryOperator<Preferences> change) {
        try {
            tools.preferences().write(change.apply(tools.preferences().read().preferences()));
        } catch (BadFileException unwritable) {
            shown.ifPresent(model -> model.say(String.valueOf(unwritable.getMessage())));
        }
    }

    /** Before the window goes: the program may end at once after it. */
    private void remember() {
        rememberSheet();
        memory.now().ifPresent(place -> prefer(preferences -> preferences.withWindow(place)));
    }

    private void rememberSheet() {
        shown.ifPresent(model -> prefer(
                preferences -> preferences.withSheet(model.stageProperty().get().words())));
    }

    /** The sheet looked at last, if it was in this session; else the first. */
    private org.pullproof.advice.Stage sheetOf(Path session) {
        Preferences liked = tools.preferences().read().preferences();
        boolean last = liked.last().equals(Optional.of(session.toAbsolutePath().normalize()));
        return Arrays.stream(org.pullproof.advice.Stage.values())
                .filter(sheet -> last && liked.sheet().equals(Optional.of(sheet.words())))
                .findFirst()
                .orElse(org.pullproof.advice.Stage.CAR);
    }

    private void closeSession() {
        rememberSheet();
        shown.ifPresent(SessionViewModel::close);
        shown = Optional.empty();
        keys = Optional.empty();
    }

    private void firstStart(String problem) {
        closeSession();
        EngineProfile drawn = profiles().get(0);
        List<RecentSession> recent = RecentSession.of(tools.preferences().read().preferences());
        FirstStart start =
                new FirstStart(drawn, ProgramVersion.text(), look, recent, clock.getZone(), new FirstStart.Ways() {
                    @Override
                    public void openDemo() {
                        open(tools.demos().first());
                    }

                    @Override
                    public void beginOwnCar() {
                        newCar();
                    }

                    @Override
                    public void openSession() {
                        chooseSession();
                    }

                    @Override
                    public void open(Path session) {
                        ProgramWindow.this.open(session);
                    }
                });
        start.say(problem);
        root(start, "Pullproof");
        start.focusFirst();
    }

    /** Every profile, the one of the title drawing first. */
    private List<EngineProfile> profiles() {
        try {
            List<EngineProfile> all = new ArrayList<>(tools.profiles().all());
            all.sort(java.util.Comparator.comparing(
                    profile -> profile.id().equals("v8-distributor-order-a") ? "" : profile.name()));
            return all;
        } catch (BadFileException bad) {
            throw new IllegalStateException(String.valueOf(bad.getMessage()), bad);
        }
    }

    private void newCar() {
        Optional<Path> left = shown.map(model -> model.open().folder());
        closeSession();
        letGo();
        NewCar[] form = new NewCar[1];
        form[0] = new NewCar(
                profiles(),
                tools.share().sessions(),
                () -> chooseFolder("Folder of a session"),
                (name, engine, folder) -> begin(form[0], name, engine, folder),
                () -> left.ifPresentOrElse(this::open, () -> firstStart("")));
        root(form[0], "Pullproof");
        form[0].focusFirst();
    }

    private void begin(NewCar form, String name, EngineProfile engine, Path folder) {
        runner.run(
                () -> tools.desk().create(folder, name, engine),
                created -> open(created.folder()),
                failure -> form.say(String.valueOf(failure.getMessage())));
    }

    /** Lets another program write the session, once what was begun here is written. */
    private void letGo() {
        runner.run(
                () -> {
                    tools.desk().letGo();
                    return true;
                },
                done -> {},
                failure -> {});
    }

    private Optional<Path> chooseFolder(String title) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        return Optional.ofNullable(chooser.showDialog(stage)).map(File::toPath);
    }

    private void chooseSession() {
        chooseFolder("Folder of a session").ifPresent(this::open);
    }

    /** Opens a session; a demo as a copy, a shared one unpacked. If it can't be opened, what is open stays. */
    private void open(Path session) {
        runner.run(() -> loader.load(session), this::showSession, failure -> {
            String why = String.valueOf(failure.getMessage());
            shown.ifPresentOrElse(model -> model.say(why), () -> firstStart(why));
        });
    }

    private void showSession(SessionLoader.Loaded loaded) {
        closeSession();
        SessionServices services = new SessionServices(
                tools.desk()::undo,
                tools.desk()::redo,
                (open, figures) -> tools.appraise().of(open, figures));
        SessionViewModel model = new SessionViewModel(loaded.open(), loaded.appraisal(), services, runner, look, clock);
        PaperSaver paper = new PaperSaver(tools.makeReport(), runner, scene::getWindow, this::paper);
        PaperDesk desk = new PaperDesk(
                tools, model, paper, chosen -> prefer(preferences -> preferences.withPaper(chosen.key())));
        model.stageProperty().set(sheetOf(loaded.open().folder()));
        ShellActs acts = new ShellActs(
                leave -> new PaperPage(new PaperViewModel(desk, paper()), leave),
                () -> saveCopy(model),
                () -> model.act(tools.desk()::readAgain),
                leave -> values(model, leave),
                leave -> versions(model, leave),
                guide,
                more(model, desk));
        MainView view = new MainView(model, sheets(model, paper, desk), acts);
        shown = Optional.of(model);
        keys = Optional.of(new Keys(view, model));
        root(view, loaded.open().session().car().name() + " – Pullproof");
        view.focusSheet();
        hint(view, loaded.open().folder());
        model.say(loaded.said());
        prefer(preferences -> preferences.withOpened(loaded.open().folder()));
    }

    /** Three hints under the copy of a demo, until they are shut for good. */
    private void hint(MainView view, Path folder) {
        boolean shut = tools.preferences().read().preferences().hintsShut();
        if (!shut && tools.demos().isCopy(folder)) {
            view.addStrip(new DemoHints(this::newCar, () -> {
                prefer(Preferences::withHintsShut);
                view.focusSheet();
            }));
        }
    }

    /** What can be done on every sheet and has no button there. */
    private List<Found> more(SessionViewModel model, PaperDesk desk) {
        return List.of(
                Found.act("Begin with another car", "a new session", "Ctrl N", this::newCar),
                Found.act("Open a session", "a folder with session.json", "Ctrl O", this::chooseSession),
                Found.act(
                        "Open a shared session",
                        "a zip, unpacked beside your sessions",
                        "",
                        () -> sharing.choose().ifPresent(this::open)),
                Found.act("Share this session", "session and pull files in one zip", "", () -> sharing.save(model)),
                Found.act("Plan of the dyno day", "printed, for the operator", "", desk::dayPlan),
                Found.act("Title sheet", "the demo, sessions opened not long ago", "", () -> firstStart("")));
    }

    private Node values(SessionViewModel model, Runnable leave) {
        EditJudgement judgement = tools.editJudgement();
        return new ValuesPage(new ValuesViewModel(model, new DeskValueActs(judgement), judgement.constants()), leave);
    }

    private Node versions(SessionViewModel model, Runnable leave) {
        return new KeptPage(new KeptViewModel(model, tools.keptSittings(), runner), leave);
    }

    private void saveCopy(SessionViewModel model) {
        chooseFolder("Folder to save a copy in").ifPresent(chosen -> new CopySaver(tools.desk()).into(model, chosen));
    }

    /** The paper chosen last; before that what goes with the units. */
    private Paper paper() {
        return tools.preferences()
                .read()
                .preferences()
                .paper()
                .flatMap(Paper::named)
                .orElseGet(() -> Paper.usualFor(look.figures().system()));
    }

    private List<Sheet> sheets(SessionViewModel model, PaperSaver paper, PaperDesk desk) {
        PictureDesk photographs = new PictureDesk(
                model, tools.attachPicture(), runner, new WindowPictureChooser(scene::getWindow), clock);
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(new CarSheet(new CarViewModel(model, tools.setFacts(), tools.chooseProfile(), profiles())));
        sheets.add(new TuneUpSheet(new TuneUpViewModel(model, tools, clock), photographs, desk::runCard));
        TallySaver tally = new TallySaver(tools.makeTally(), paper);
        PictureSaver pictures = new PictureSaver(tools.makeReport(), runner, scene::getWindow);
        sheets.addAll(new MeasuringSheets(tools, cautions, pullFiles, tally::save, pictures::save, weigher, clock)
                .of(model, photographs));
        return sheets;
    }
}
