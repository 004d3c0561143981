package org.pullproof.ui;

import java.time.Clock;
import java.time.LocalDate;
import java.util.function.BiConsumer;
import javafx.application.Platform;
import org.pullproof.advice.Cautions;
import org.pullproof.advice.Stage;
import org.pullproof.app.BackgroundRunner;
import org.pullproof.app.ThreadTicks;
import org.pullproof.app.Toolbox;
import org.pullproof.app.WatchFolder;
import org.pullproof.drawing.Drawing;
import org.pullproof.health.OddReading;
import org.pullproof.health.TestKind;
import org.pullproof.ui.changes.ChangesSheet;
import org.pullproof.ui.changes.ChangesViewModel;
import org.pullproof.ui.changes.DeskChangeActs;
import org.pullproof.ui.dynoday.AirViewModel;
import org.pullproof.ui.dynoday.DayViewModel;
import org.pullproof.ui.dynoday.DeskDayActs;
import org.pullproof.ui.dynoday.DeskDynoActs;
import org.pullproof.ui.dynoday.DynoDaySheet;
import org.pullproof.ui.dynoday.DynoDayViewModel;
import org.pullproof.ui.dynoday.PullFileChooser;
import org.pullproof.ui.dynoday.WatchViewModel;
import org.pullproof.ui.health.DeskHealthActs;
import org.pullproof.ui.health.FenderCautions;
import org.pullproof.ui.health.FenderViewModel;
import org.pullproof.ui.health.HealthSheet;
import org.pullproof.ui.health.HealthViewModel;
import org.pullproof.ui.health.SheetReadingRules;
import org.pullproof.ui.health.TdcViewModel;
import org.pullproof.ui.parts.PictureStrip;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.ui.worth.DeskMoneyActs;
import org.pullproof.ui.worth.WorthSheet;
import org.pullproof.ui.worth.WorthViewModel;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.Correction;

/** Builds the sheets on which something is measured and paid for: Health, Dyno day, Changes, Worth it. */
public final class MeasuringSheets {
    private final Toolbox tools;
    private final Cautions cautions;
    private final PullFileChooser chooser;
    private final BiConsumer<SessionViewModel, TestKind> tally;
    private final BiConsumer<SessionViewModel, Drawing> pictures;
    private final BackgroundRunner weigher;
    private final Clock clock;

    /**
     * @param tally saves the printed blank of a test
     * @param pictures saves a picture
     * @param weigher weighs options, beside the work that writes sessions
     */
    public MeasuringSheets(
            Toolbox tools,
            Cautions cautions,
            PullFileChooser chooser,
            BiConsumer<SessionViewModel, TestKind> tally,
            BiConsumer<SessionViewModel, Drawing> pictures,
            BackgroundRunner weigher,
            Clock clock) {
        this.tools = tools;
        this.cautions = cautions;
        this.chooser = chooser;
        this.tally = tally;
        this.pictures = pictures;
        this.weigher = weigher;
        this.clock = clock;
    }

    /**
     * Makes the sheet of a stage for one session.
     *
     * @param photographs attaches photographs to it
     * @throws IllegalArgumentException if nothing is measured or paid for in that stage
     */
    public Sheet of(SessionViewModel session, Stage stage, PictureStrip.Acts photographs) {
        return switch (stage) {
            case HEALTH -> health(session, photographs);
            case DYNO_DAY -> dynoDay(session);
            case CHANGES -> changes(session, photographs);
            case WORTH_IT -> worth(session);
            case CAR, TUNE_UP ->
                throw new IllegalArgumentException("Nothing is measured on the sheet " + stage.words());
        };
    }

    private Sheet health(SessionViewModel session, PictureStrip.Acts photographs) {
        SheetReadingRules rules = new SheetReadingRules(() -> session.session().profile(), clock);
        DeskHealthActs acts = new DeskHealthActs(tools.recordReading(), tools.correctReading(), tools.removeReading());
        FenderViewModel fender = new FenderViewModel(
                session, rules, acts, () -> odd(session), FenderCautions.of(cautions), () -> LocalDate.now(clock));
        return new HealthSheet(
                new HealthViewModel(session, rules, acts),
                fender,
                new TdcViewModel(session, cautions.of("air-in-cylinder")),
                cautions::of,
                test -> tally.accept(session, test),
                photographs);
    }

    private OddReading odd(SessionViewModel session) {
        return tools.oddReading().apply(session.session().judgement());
    }

    private Sheet dynoDay(SessionViewModel session) {
        DeskDynoActs acts = new DeskDynoActs(
                tools.recordAir(), tools.addPulls(), tools.foreignFiles(), tools.excludePull(), tools.setFacts());
        AirViewModel air = new AirViewModel(session, acts, new Correction(), new AirCheck(), clock);
        DynoDayViewModel model = new DynoDayViewModel(session, acts, air, Platform::runLater);
        WatchViewModel watch =
                new WatchViewModel(new WatchFolder(new ThreadTicks(), clock), model.takingIn(), Platform::runLater);
        session.onClose(watch::stop);
        return new DynoDaySheet(
                model,
                new DayViewModel(session, new DeskDayActs(tools.prepareDay()), clock),
                watch,
                chooser,
                picture -> pictures.accept(session, picture),
                cautions.of("dyno-pull"));
    }

    private Sheet changes(SessionViewModel session, PictureStrip.Acts photographs) {
        DeskChangeActs acts = new DeskChangeActs(tools.changeSetup(), tools.amendChange());
        ChangesViewModel model = new ChangesViewModel(session, acts, clock);
        return new ChangesSheet(model, cautions.of("change"), photographs);
    }

    private Sheet worth(SessionViewModel session) {
        return new WorthSheet(new WorthViewModel(
                session,
                new DeskMoneyActs(tools.recordMoney(), tools.setFacts(), tools.editJudgement()),
                weigher,
                clock));
    }
}
