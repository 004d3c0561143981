package org.pullproof.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.DynoDays;
import org.pullproof.dyno.ImportProblem;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.PullTable;
import org.pullproof.files.BadFileException;
import org.pullproof.files.IncomingFile;
import org.pullproof.files.SessionFolder;
import org.pullproof.session.Edit;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;
import org.pullproof.units.Quantity;
import org.pullproof.weather.Standard;

/** Takes in pull files for one setup, in the order given: all of them or, if one cannot be read, none. */
public final class AddPulls {
    /**
     * What to take in, and how.
     *
     * @param files in the order of the pulls
     * @param setup name of the setup; one not known yet is made, reached by a change from the present one; empty means the
     *     present one
     * @param at when the pulls were made, as far as it is known; without it each file's own time
     * @param levels numeric settings of that setup by name
     * @param columns what is said of the files' columns
     * @param correctedAlready the standard the figures are already corrected to, if so
     */
    public record Wanted(
            List<Path> files,
            Optional<String> setup,
            Optional<LocalDateTime> at,
            Map<String, Quantity> levels,
            List<ColumnChoice> columns,
            Optional<Standard> correctedAlready) {
        public Wanted {
            files = List.copyOf(files);
            levels = Map.copyOf(levels);
            columns = List.copyOf(columns);
            correctedAlready = correctedAlready.filter(standard -> standard != Standard.NONE);
        }

        /** Files for a setup, and nothing more to say. */
        public static Wanted of(List<Path> files, Optional<String> setup) {
            return new Wanted(files, setup, Optional.empty(), Map.of(), List.of(), Optional.empty());
        }
    }

    /**
     * What came of it.
     *
     * @param open the session with the pulls
     * @param added the pulls, in order
     * @param problems rows left out and doubts, with file and place; they stopped nothing
     */
    public record Outcome(OpenSession open, List<Pull> added, List<Problem> problems) {
        public Outcome {
            added = List.copyOf(added);
            problems = List.copyOf(problems);
        }

        /** The same pulls in a session that went on. */
        public Outcome with(OpenSession next) {
            return new Outcome(next, added, problems);
        }
    }

    private final SessionDesk desk;
    private final PullFileReader reader;
    private final Clock clock;

    public AddPulls(SessionDesk desk, PullFileReader reader, Clock clock) {
        this.desk = desk;
        this.reader = reader;
        this.clock = clock;
    }

    /**
     * @throws BadFileException with every file that cannot be read as a pull; nothing is then taken in
     * @throws IllegalArgumentException with a sentence if a level contradicts what is recorded
     */
    public Outcome add(OpenSession open, Wanted wanted) throws BadFileException {
        List<IncomingFile> files = new ArrayList<>();
        List<Problem> left = readAll(wanted, files);
        Session inSetup = inSetup(open.session(), wanted, time(wanted, files.get(0)));
        List<Pull> pulls = kept(open, wanted, files, inSetup);
        OpenSession next = desk.edit(open, new Edit(name(inSetup, pulls), before -> {
            Session session = inSetup(before, wanted, pulls.get(0).time());
            for (Pull pull : pulls) {
                session = session.withDays(DynoDays.with(session.days(), pull));
            }
            return session;
        }));
        return new Outcome(next, pulls, left);
    }

    private static String name(Session session, List<Pull> pulls) {
        String setup = session.present().name();
        return pulls.size() == 1 ? "Add a pull on " + setup : "Add " + pulls.size() + " pulls on " + setup;
    }

    /** Reads every file before anything is kept, so that all that is wrong is told at once. */
    private List<Problem> readAll(Wanted wanted, List<IncomingFile> files) throws BadFileException {
        List<Problem> wrong = new ArrayList<>();
        List<Problem> left = new ArrayList<>();
        for (Path path : wanted.files()) {
            try {
                IncomingFile file = IncomingFile.read(path);
                PullTable table = reader.table(path.toString(), file.bytes(), wanted.columns());
                table.problems().forEach(problem -> left.add(problem(path, problem)));
                files.add(file);
            } catch (BadFileException bad) {
                wrong.addAll(bad.problems());
            }
        }
        if (!wrong.isEmpty()) {
            throw new BadFileException(wrong);
        }
        if (files.isEmpty()) {
            throw new IllegalArgumentException("No pull file is named.");
        }
        return left;
    }

    private static Problem problem(Path file, ImportProblem problem) {
        String column = problem.column().isEmpty() ? "" : ", column " + problem.column();
        return new Problem(file.toString(), "line " + problem.line() + column, problem.message());
    }

    private static LocalDateTime time(Wanted wanted, IncomingFile file) {
        return wanted.at().orElse(file.changed().truncatedTo(ChronoUnit.SECONDS));
    }

    /** Without a time that was told, that of the file is all there is; when it came in is known. */
    private Optional<LocalDateTime> takenIn(Wanted wanted) {
        return wanted.at().isPresent()
                ? Optional.empty()
                : Optional.of(LocalDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS));
    }

    private static Session inSetup(Session session, Wanted wanted, LocalDateTime time) {
        String name = wanted.setup().orElse(session.present().name());
        return ChangeSetup.applied(session, new ChangeSetup.Wanted(name, "", wanted.levels(), Optional.empty(), time, Set.of()));
    }

    private List<Pull> kept(OpenSession open, Wanted wanted, List<IncomingFile> files, Session inSetup)
            throws BadFileException {
        SessionFolder folder = new SessionFolder(open.folder());
        String setup = inSetup.presentSetup();
        int number = DynoDays.nextNumber(inSetup.days(), setup);
        List<Pull> pulls = new ArrayList<>();
        for (IncomingFile file : files) {
            PullFile kept = folder.keep(file.name(), file.bytes());
            pulls.add(new Pull(
                    setup,
                    number + pulls.size(),
                    kept,
                    time(wanted, file),
                    takenIn(wanted),
                    wanted.columns(),
                    wanted.correctedAlready(),
                    Optional.empty()));
        }
        return pulls;
    }
}
