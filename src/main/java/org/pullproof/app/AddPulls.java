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
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.DynoDays;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.ImportProblem;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.PullTable;
import org.pullproof.dyno.Trace;
import org.pullproof.files.BadFileException;
import org.pullproof.files.LargeFile;
import org.pullproof.session.Edit;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;
import org.pullproof.units.Quantity;
import org.pullproof.weather.Standard;

/**
 * Takes in pull files for one setup, in the order given: all of them or, if one cannot be read, none. A file with several pulls gives
 * several.
 */
public final class AddPulls {
    /**
     * What to take in, and how.
     *
     * @param files in the order of the pulls
     * @param setup name of the setup; one not known yet is made, reached by a change from the present one; empty means the
     *     present one
     * @param at when the first pull was made, if it was told; without it what each file says, else when it was written
     * @param levels numeric settings of that setup by name
     * @param how what is said of the files' columns and of the drum
     * @param correctedAlready the standard the figures are already corrected to, if so; {@link Standard#NONE} tells that they are as
     *     measured, whatever the files say
     */
    public record Wanted(
            List<Path> files,
            Optional<String> setup,
            Optional<LocalDateTime> at,
            Map<String, Quantity> levels,
            HowRead how,
            Optional<Standard> correctedAlready) {
        public Wanted {
            files = List.copyOf(files);
            levels = Map.copyOf(levels);
            how = correctedAlready.equals(Optional.of(Standard.NONE)) ? how.toldAsMeasured() : how;
            correctedAlready = correctedAlready.filter(standard -> standard != Standard.NONE);
        }

        /** Files that have their power. */
        public Wanted(
                List<Path> files,
                Optional<String> setup,
                Optional<LocalDateTime> at,
                Map<String, Quantity> levels,
                List<ColumnChoice> columns,
                Optional<Standard> correctedAlready) {
            this(files, setup, at, levels, HowRead.by(columns), correctedAlready);
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
        return add(open, wanted, Progress.unheard());
    }

    /**
     * The same, telling how many files are read; stopped, nothing is taken in.
     *
     * @throws BadFileException with every file that cannot be read as a pull; nothing is then taken in
     * @throws IllegalArgumentException with a sentence if a level contradicts what is recorded, or if it was stopped
     */
    public Outcome add(OpenSession open, Wanted wanted, Progress progress) throws BadFileException {
        List<ReadFile> files = readAll(wanted, progress);
        List<Problem> left = new ArrayList<>();
        files.forEach(file -> file.table().problems().forEach(problem -> left.add(problem(file.path(), problem))));
        PullTimes times = new PullTimes(wanted.at(), files);
        Session inSetup = inSetup(open.session(), wanted, times.all().get(0));
        List<Pull> pulls = kept(open, wanted, files, inSetup, times.all());
        left.addAll(times.guesses(pulls));
        Edit edit = new Edit(name(inSetup, pulls), before -> {
            Session session = inSetup(before, wanted, pulls.get(0).time());
            for (Pull pull : pulls) {
                session = session.withDays(DynoDays.with(session.days(), pull));
            }
            return session;
        });
        OpenSession next = desk.edit(open, edit, read(pulls, files));
        return new Outcome(next, pulls, left);
    }

    /** The figures of the pulls, which are then not read again from what is kept: it has the same bytes. */
    private static Map<Pull, Trace> read(List<Pull> pulls, List<ReadFile> files) {
        List<Trace> traces =
                files.stream().flatMap(file -> file.table().pulls().stream()).toList();
        return IntStream.range(0, pulls.size()).boxed().collect(Collectors.toMap(pulls::get, traces::get));
    }

    private static String name(Session session, List<Pull> pulls) {
        String setup = session.present().name();
        return pulls.size() == 1 ? "Add a pull on " + setup : "Add " + pulls.size() + " pulls on " + setup;
    }

    /** A file that came, and the pulls in it. */
    record ReadFile(Path path, LargeFile file, PullTable table) {}

    /** Reads every file before anything is kept, so that all that is wrong is told at once. */
    private List<ReadFile> readAll(Wanted wanted, Progress progress) throws BadFileException {
        List<Problem> wrong = new ArrayList<>();
        List<ReadFile> files = new ArrayList<>();
        int done = 0;
        for (Path path : wanted.files()) {
            progress.at(done++, wanted.files().size());
            requireGoing(progress);
            try {
                LargeFile file = LargeFile.at(path);
                StoppableBytes bytes = new StoppableBytes(file.bytes(), progress);
                files.add(new ReadFile(path, file, reader.table(path.toString(), bytes, wanted.how())));
            } catch (BadFileException bad) {
                requireGoing(progress);
                wrong.addAll(bad.problems());
            }
        }
        if (!wrong.isEmpty()) {
            throw new BadFileException(wrong);
        }
        if (files.isEmpty()) {
            throw new IllegalArgumentException("No pull file is named.");
        }
        return files;
    }

    private static void requireGoing(Progress progress) {
        if (progress.stopped()) {
            throw new IllegalArgumentException("Stopped: no pull was taken in, the session is as it was.");
        }
    }

    private static Problem problem(Path file, ImportProblem problem) {
        String column = problem.column().isEmpty() ? "" : ", column " + problem.column();
        return new Problem(file.toString(), "line " + problem.line() + column, problem.message());
    }

    /** Where neither a person nor the file tells the day, that of the file is all there is; when it came in is known. */
    private Optional<LocalDateTime> takenIn(Wanted wanted, ReadFile file) {
        return wanted.at().isPresent() || file.table().told().date().isPresent()
                ? Optional.empty()
                : Optional.of(LocalDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS));
    }

    private static Session inSetup(Session session, Wanted wanted, LocalDateTime time) {
        String name = wanted.setup().orElse(session.present().name());
        return ChangeSetup.applied(
                session, new ChangeSetup.Wanted(name, "", wanted.levels(), Optional.empty(), time, Set.of()));
    }

    private List<Pull> kept(
            OpenSession open, Wanted wanted, List<ReadFile> files, Session inSetup, List<LocalDateTime> times)
            throws BadFileException {
        String setup = inSetup.presentSetup();
        int number = DynoDays.nextNumber(inSetup.days(), setup);
        List<Pull> pulls = new ArrayList<>();
        for (ReadFile file : files) {
            PullFile kept = desk.keep(open, folder -> folder.keep(file.file()));
            for (int part = 1; part <= file.table().pulls().size(); part++) {
                pulls.add(new Pull(
                        setup,
                        number + pulls.size(),
                        kept,
                        times.get(pulls.size()),
                        takenIn(wanted, file),
                        wanted.how().ofPart(part),
                        wanted.correctedAlready(),
                        Optional.empty()));
            }
        }
        return pulls;
    }
}
