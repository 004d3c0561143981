package org.pullproof;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import org.pullproof.advice.Appraiser;
import org.pullproof.advice.Cautions;
import org.pullproof.advice.NextStepRules;
import org.pullproof.app.AddPulls;
import org.pullproof.app.AddReadings;
import org.pullproof.app.AmendChange;
import org.pullproof.app.Appraise;
import org.pullproof.app.AttachPicture;
import org.pullproof.app.ChangeSetup;
import org.pullproof.app.CheckSession;
import org.pullproof.app.ChooseProfile;
import org.pullproof.app.CorrectReading;
import org.pullproof.app.DemoShelf;
import org.pullproof.app.EditJudgement;
import org.pullproof.app.EditSteps;
import org.pullproof.app.ExcludePull;
import org.pullproof.app.ForeignFiles;
import org.pullproof.app.JudgedAssessors;
import org.pullproof.app.KeptSittings;
import org.pullproof.app.MakeReport;
import org.pullproof.app.MakeRunCard;
import org.pullproof.app.MakeTally;
import org.pullproof.app.PrepareDay;
import org.pullproof.app.PullFileReader;
import org.pullproof.app.ReadAir;
import org.pullproof.app.ReadRoll;
import org.pullproof.app.RecordAir;
import org.pullproof.app.RecordMoney;
import org.pullproof.app.RecordParts;
import org.pullproof.app.RecordPlug;
import org.pullproof.app.RecordReading;
import org.pullproof.app.RecordSettings;
import org.pullproof.app.RecordWires;
import org.pullproof.app.RecordWork;
import org.pullproof.app.RemoveReading;
import org.pullproof.app.SessionDesk;
import org.pullproof.app.SetFacts;
import org.pullproof.app.ShareSession;
import org.pullproof.app.ShelveParts;
import org.pullproof.app.TickStep;
import org.pullproof.app.Toolbox;
import org.pullproof.app.Window;
import org.pullproof.cli.Commands;
import org.pullproof.files.CsvFile;
import org.pullproof.files.PreferenceFile;
import org.pullproof.files.ProfileShelf;
import org.pullproof.files.StepsFile;
import org.pullproof.files.TradeConstants;
import org.pullproof.files.TradeFiles;
import org.pullproof.health.OddReading;
import org.pullproof.tuneup.StepGraphs;
import org.pullproof.ui.ToolkitStart;
import org.pullproof.ui.WindowLauncher;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.Correction;

/** Builds all objects by hand and starts the command line, which may open the window. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        PrintWriter out = utf8(System.out);
        PrintWriter err = utf8(System.err);
        Optional<ToolkitStart> toolkit = toolkit(arguments);
        int status = new Commands(tools(home(), config()), toolkit.map(Main::window), clock()).run(out, err, arguments);
        out.flush();
        err.flush();
        System.exit(status);
    }

    // The words have signs (±, °) that an old default encoding cannot write.
    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    /** Begun before anything else, if a window is asked for and there is a display to show it on. */
    private static Optional<ToolkitStart> toolkit(String... arguments) {
        boolean window = arguments.length == 0 || arguments[0].equals("open");
        if (!window || !hasDisplay()) {
            return Optional.empty();
        }
        ToolkitStart toolkit = new ToolkitStart();
        toolkit.begin();
        return Optional.of(toolkit);
    }

    private static Window window(ToolkitStart toolkit) {
        TradeFiles trade = new TradeFiles();
        return new WindowLauncher(toolkit, new Cautions(trade.cautions(), trade.lastCaution()), clock());
    }

    /** On Linux a display has to be named; elsewhere there is one. */
    private static boolean hasDisplay() {
        boolean linux = System.getProperty("os.name", "").startsWith("Linux");
        return !linux || named("DISPLAY") || named("WAYLAND_DISPLAY");
    }

    private static boolean named(String variable) {
        return !Optional.ofNullable(System.getenv(variable)).orElse("").isBlank();
    }

    private static Clock clock() {
        return Clock.system(ZoneId.systemDefault());
    }

    /** The folder of the program, with its profiles and demo sessions. */
    private static Path home() {
        return Path.of(System.getProperty("pullproof.home", "."));
    }

    private static Path config() {
        return PreferenceFile.folder(System.getProperties(), System.getenv());
    }

    /** As {@link #tools(Path, Path, Path)}, the sessions in the folder {@code pullproof} of the user. */
    public static Toolbox tools(Path home, Path config) {
        return tools(home, config, Path.of(System.getProperty("user.home", "."), "pullproof"));
    }

    /**
     * Builds every object of the program.
     *
     * @param home the folder with profiles and demo sessions
     * @param config the user's own folder, for preferences and copies of demos
     * @param sessions the folder in which the user keeps sessions
     */
    public static Toolbox tools(Path home, Path config, Path sessions) {
        PullFileReader pullReader = new PullFileReader(new CsvFile());
        SessionDesk desk = new SessionDesk(pullReader, clock());
        Correction correction = new Correction();
        TradeConstants constants = new TradeConstants();
        TradeFiles trade = new TradeFiles();
        Cautions cautions = new Cautions(trade.cautions(), trade.lastCaution());
        ReadAir readAir = new ReadAir(new AirCheck(), correction);
        StepGraphs graphs = trade.stepGraphs();
        return new Toolbox(
                new ProfileShelf(home.resolve("profiles")),
                new DemoShelf(home.resolve("demo-sessions"), config.resolve("demo-sessions")),
                new PreferenceFile(config),
                desk,
                new SetFacts(desk, clock()),
                new ChooseProfile(desk),
                new ChangeSetup(desk),
                new AmendChange(desk),
                readAir,
                new RecordAir(desk, readAir),
                new AddPulls(desk, pullReader, clock()),
                new ForeignFiles(pullReader, new PreferenceFile(config)),
                new ReadRoll(pullReader),
                new PrepareDay(desk),
                new ExcludePull(desk),
                new AddReadings(desk, new CsvFile(), clock()),
                new RecordReading(desk),
                new CorrectReading(desk),
                new RemoveReading(desk),
                judgement -> new OddReading(constants.health(judgement)),
                new TickStep(desk, graphs),
                new RecordPlug(desk),
                new RecordWires(desk),
                new ShelveParts(desk, graphs),
                new RecordParts(desk),
                new RecordSettings(desk),
                new RecordWork(desk),
                new AttachPicture(desk),
                new EditSteps(desk, graphs, new StepsFile(trade)),
                new MakeRunCard(cautions),
                new RecordMoney(desk),
                new Appraise(new Appraiser(
                        new JudgedAssessors(constants, trade, correction),
                        new NextStepRules(trade.testPrices(), cautions))),
                new EditJudgement(desk, constants),
                new KeptSittings(desk),
                new CheckSession(desk),
                new MakeReport(cautions, clock()),
                new MakeTally(cautions),
                new ShareSession(sessions));
    }
}
