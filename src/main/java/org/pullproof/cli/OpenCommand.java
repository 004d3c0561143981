package org.pullproof.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.ShareSession;
import org.pullproof.app.Toolbox;
import org.pullproof.app.Window;
import org.pullproof.files.BadFileException;
import org.pullproof.files.PreferenceFile;
import org.pullproof.files.Preferences;
import org.pullproof.files.SessionFolder;
import org.pullproof.units.Figures;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the window or, where there is no display, prints the report. */
@Command(
        name = "open",
        description = {
            "Opens the window on a session, else on the last one, else on the title sheet.",
            "A demo session opens as a copy of your own. Without a display the report is printed instead."
        })
final class OpenCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final Optional<Window> window;

    @Parameters(
            arity = "0..1",
            paramLabel = "SESSION",
            description = "The session's folder, or a shared session as a .zip.")
    private Optional<Path> session = Optional.empty();

    @Spec
    private CommandSpec spec;

    /**
     * @param window empty where there is no display
     */
    OpenCommand(Toolbox tools, Optional<Window> window) {
        this.tools = tools;
        this.window = window;
    }

    @Override
    public Integer call() throws Exception {
        PreferenceFile.Found found = tools.preferences().read();
        found.problem().ifPresent(problem -> err().println(problem));
        Optional<Path> chosen = session.isPresent() ? Optional.of(unpacked(session.get())) : last(found.preferences());
        if (window.isPresent()) {
            show(window.get(), chosen, found.preferences());
        } else {
            report(chosen, found.preferences());
        }
        return Output.DONE;
    }

    /** A shared session is unpacked beside the user's own, and that is said. */
    private Path unpacked(Path named) throws BadFileException {
        if (!tools.share().isShared(named)) {
            return named;
        }
        Path folder = tools.share().unpack(named);
        err().println(ShareSession.unpackedTo(folder));
        return folder;
    }

    /** The session opened last that is still there. */
    private static Optional<Path> last(Preferences preferences) {
        return preferences.recent().stream()
                .filter(recent -> new SessionFolder(recent).holdsSession())
                .findFirst();
    }

    private void show(Window display, Optional<Path> chosen, Preferences preferences) throws BadFileException {
        if (chosen.isEmpty()) {
            display.open(tools, Optional.empty());
            return;
        }
        Path readable = chosen.get();
        new SessionFolder(readable).read();
        Path own = tools.demos().holds(readable) ? tools.demos().copy(readable) : readable;
        remember(preferences.withOpened(own));
        display.open(tools, Optional.of(own));
    }

    /** Preferences that cannot be kept are no reason not to open a session. */
    private void remember(Preferences preferences) {
        try {
            tools.preferences().write(preferences);
        } catch (BadFileException bad) {
            bad.problems().forEach(problem -> err().println(problem));
        }
    }

    private void report(Optional<Path> chosen, Preferences preferences) throws BadFileException {
        Path readable = chosen.orElseGet(() -> tools.demos().first());
        OpenSession open = tools.desk().open(readable);
        err().println("There is no display here, so no window opens; this is the report of " + readable + ".");
        open.problems().forEach(problem -> err().println(problem));
        String text = tools.makeReport().text(tools.appraise().of(open, new Figures(preferences.units())));
        spec.commandLine().getOut().print(text);
        spec.commandLine().getOut().flush();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
