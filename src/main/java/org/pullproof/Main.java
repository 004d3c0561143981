package org.pullproof;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import org.pullproof.app.AddPulls;
import org.pullproof.app.AddReadings;
import org.pullproof.app.AssessDyno;
import org.pullproof.app.AssessHealth;
import org.pullproof.app.ChangeSetup;
import org.pullproof.app.CheckSession;
import org.pullproof.app.DemoShelf;
import org.pullproof.app.ExcludePull;
import org.pullproof.app.MakeReport;
import org.pullproof.app.PullFileReader;
import org.pullproof.app.ReadAir;
import org.pullproof.app.RecordAir;
import org.pullproof.app.RecordReading;
import org.pullproof.app.RemoveReading;
import org.pullproof.app.SessionDesk;
import org.pullproof.app.SetFacts;
import org.pullproof.app.Toolbox;
import org.pullproof.cli.Commands;
import org.pullproof.dyno.DynoAssessor;
import org.pullproof.files.CsvFile;
import org.pullproof.files.HealthLimitsFile;
import org.pullproof.files.PreferenceFile;
import org.pullproof.files.ProfileShelf;
import org.pullproof.health.HealthAssessor;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.Correction;

/** Builds all objects by hand and starts the command line, which may open the window. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        PrintWriter out = utf8(System.out);
        PrintWriter err = utf8(System.err);
        int status = new Commands(tools(home(), config())).run(out, err, arguments);
        out.flush();
        err.flush();
        System.exit(status);
    }

    // The words have signs (±, °) that an old default encoding cannot write.
    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    /** The folder of the program, with its profiles and demo sessions. */
    private static Path home() {
        return Path.of(System.getProperty("pullproof.home", "."));
    }

    private static Path config() {
        return PreferenceFile.folder(System.getProperties(), System.getenv());
    }

    /**
     * Builds every object of the program.
     *
     * @param home the folder with profiles and demo sessions
     * @param config the user's own folder, for preferences and copies of demos
     */
    public static Toolbox tools(Path home, Path config) {
        PullFileReader pullReader = new PullFileReader(new CsvFile());
        SessionDesk desk = new SessionDesk(pullReader);
        Correction correction = new Correction();
        ReadAir readAir = new ReadAir(new AirCheck(), correction);
        return new Toolbox(
                new ProfileShelf(home.resolve("profiles")),
                new DemoShelf(home.resolve("demo-sessions"), config.resolve("demo-sessions")),
                new PreferenceFile(config),
                desk,
                new SetFacts(desk),
                new ChangeSetup(desk),
                readAir,
                new RecordAir(desk, readAir),
                new AddPulls(desk, pullReader),
                new ExcludePull(desk),
                new AssessDyno(new DynoAssessor(correction)),
                new AddReadings(desk, new CsvFile(), Clock.system(ZoneId.systemDefault())),
                new RecordReading(desk),
                new RemoveReading(desk),
                new AssessHealth(new HealthAssessor(new HealthLimitsFile().read())),
                new CheckSession(desk),
                new MakeReport(Clock.system(ZoneId.systemDefault())));
    }
}
