package org.pullproof.robustness;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.pullproof.app.OpenSession;
import org.pullproof.app.PullFileReader;
import org.pullproof.app.Toolbox;
import org.pullproof.dyno.HowRead;
import org.pullproof.engine.EngineProfile;
import org.pullproof.files.BadFileException;
import org.pullproof.files.CsvFile;
import org.pullproof.files.FileBytes;
import org.pullproof.health.ReadingSheet;
import org.pullproof.session.Problem;
import org.pullproof.testing.Tools;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/**
 * Spoils sessions, profiles, tables of readings, pull files, steps, preferences, zips and pictures, and reads them: each is taken, or refused by a sentence, within five
 * seconds. Of the sessions that are taken, some are appraised to the end.
 */
final class HostileFiles implements AutoCloseable {
    private static final int SECONDS = 5;
    private static final int APPRAISED = 20;

    /** What reads one kind of file; it returns the sentences it refuses with. */
    @FunctionalInterface
    private interface Reader {
        List<Problem> read(byte[] bytes, boolean toTheEnd) throws Exception;
    }

    private record Kind(String name, List<byte[]> samples, Reader reader) {}

    /**
     * @param taken files that were taken in spite of all
     * @param refused files refused by a sentence
     * @param wrong each input that was answered otherwise: kind, seed and what came
     */
    record Outcome(int taken, int refused, List<String> wrong) {}

    private final Path folder;
    private final OtherFiles others;
    private final Toolbox tools = Tools.ofTheProgram();
    private final EngineProfile engine = Tools.profile("i4-distributor");
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "hostile-files");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * @param folder that may be written
     */
    HostileFiles(Path folder) {
        this.folder = folder;
        this.others = new OtherFiles(folder);
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }

    /** Tries as many files of each kind in turn, from a seed on. */
    Outcome read(int times, long firstSeed) throws IOException {
        List<Kind> kinds = kinds();
        warmUp(kinds.get(0));
        Map<Boolean, Integer> count = new TreeMap<>(Map.of(true, 0, false, 0));
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            Kind kind = kinds.get(i % kinds.size());
            long seed = firstSeed + i;
            byte[] sample = kind.samples()
                    .get((int) (seed / kinds.size() % kind.samples().size()));
            byte[] spoilt = new Spoiler(seed).spoil(sample);
            try {
                List<Problem> problems = inTime(kind, spoilt, i % APPRAISED < kinds.size());
                count.merge(problems.isEmpty(), 1, Integer::sum);
                problems.stream()
                        .filter(problem -> !isSentence(problem.message()))
                        .forEach(problem -> wrong.add(kind.name() + " " + seed + ": no sentence: " + problem));
            } catch (AssertionError failure) {
                wrong.add(kind.name() + " " + seed + ": " + failure.getMessage());
            }
        }
        return new Outcome(count.getOrDefault(true, 0), count.getOrDefault(false, 0), wrong);
    }

    /** The first answer loads the program; its time says nothing of a file. */
    private void warmUp(Kind sessions) throws IOException {
        try {
            sessions.reader().read(sessions.samples().get(0), true);
        } catch (Exception failure) {
            throw new IOException("A demo session is not read", failure);
        }
    }

    private List<Problem> inTime(Kind kind, byte[] bytes, boolean toTheEnd) {
        try {
            return worker.submit(() -> kind.reader().read(bytes, toTheEnd)).get(SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException hangs) {
            throw new AssertionError("no answer in " + SECONDS + " s", hangs);
        } catch (InterruptedException stopped) {
            throw new AssertionError("stopped", stopped);
        } catch (ExecutionException failure) {
            Throwable cause = Objects.requireNonNull(failure.getCause());
            StackTraceElement[] trace = cause.getStackTrace();
            throw new AssertionError(cause + " at " + (trace.length > 0 ? where(trace) : "?"), failure);
        }
    }

    private static String where(StackTraceElement[] trace) {
        return Stream.of(trace)
                .filter(at -> at.getClassName().startsWith("org.pullproof"))
                .limit(3)
                .toList()
                .toString();
    }

    /** A few words at least, an end, nothing that moves the cursor, and not the whole file over again. */
    private static boolean isSentence(String message) {
        return message.matches("(?s).{10,2000}[.?].{0,3}") && message.chars().noneMatch(Character::isISOControl);
    }

    private List<Kind> kinds() throws IOException {
        return List.of(
                new Kind("session", files(Path.of("demo-sessions"), "session.json"), this::session),
                new Kind("profile", files(Path.of("profiles"), "[a-z0-9-]+\\.json"), this::profile),
                new Kind(
                        "readings",
                        withoutOrigin(files(Path.of("src/test/resources/org/pullproof/health"), "d\\d.*\\.csv")),
                        (bytes, toTheEnd) -> readings(bytes)),
                new Kind(
                        "pull",
                        Stream.of(
                                        files(Path.of("src/test/resources/org/pullproof/dyno"), "A\\d_.*\\.csv"),
                                        files(Path.of("demo-sessions"), ".*\\.csv"))
                                .flatMap(List::stream)
                                .toList(),
                        (bytes, toTheEnd) -> pull(bytes)),
                new Kind(
                        "steps",
                        files(Path.of("src/main/resources/org/pullproof/tuneup"), ".*\\.json"),
                        (bytes, toTheEnd) -> others.steps(bytes)),
                new Kind(
                        "preferences",
                        List.of(others.somePreferences()),
                        (bytes, toTheEnd) -> others.preferences(bytes)),
                new Kind("zip", List.of(others.someZip()), (bytes, toTheEnd) -> others.zip(bytes)),
                new Kind("picture", others.somePictures(), (bytes, toTheEnd) -> others.picture(bytes)));
    }

    private static List<byte[]> files(Path folder, String name) throws IOException {
        List<byte[]> samples = new ArrayList<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.sorted().toList()) {
                if (Files.isRegularFile(file) && file.getFileName().toString().matches(name)) {
                    samples.add(Files.readAllBytes(file));
                }
            }
        }
        if (samples.isEmpty()) {
            throw new IllegalStateException("No sample in " + folder);
        }
        return samples;
    }

    /** Our samples begin with where they come from, which no table of a user does. */
    private static List<byte[]> withoutOrigin(List<byte[]> samples) {
        return samples.stream()
                .map(bytes ->
                        new String(bytes, UTF_8).replaceAll("(?m)^#.*\\R", "").getBytes(UTF_8))
                .toList();
    }

    private List<Problem> session(byte[] bytes, boolean toTheEnd) throws IOException {
        Files.write(folder.resolve("session.json"), bytes);
        try {
            OpenSession open = tools.desk().open(folder);
            if (toTheEnd) {
                tools.makeReport().text(tools.appraise().of(open, new Figures(UnitSystem.US)));
            }
            return List.of();
        } catch (BadFileException refused) {
            return refused.problems();
        }
    }

    private List<Problem> profile(byte[] bytes, boolean toTheEnd) throws IOException {
        Path file = Files.write(folder.resolve("own.json"), bytes);
        try {
            tools.profiles().find(file.toString());
            return List.of();
        } catch (BadFileException refused) {
            return refused.problems();
        }
    }

    private List<Problem> readings(byte[] bytes) {
        try {
            List<ReadingSheet.Row> rows = new CsvFile()
                    .rows("readings.csv", bytes).stream()
                            .map(row -> new ReadingSheet.Row(row.line(), row.cells()))
                            .toList();
            return new ReadingSheet(engine, LocalDateTime.of(2026, 6, 14, 12, 0))
                    .read(rows).problems().stream()
                            .map(problem -> new Problem("readings.csv", "row " + problem.line(), problem.message()))
                            .toList();
        } catch (BadFileException refused) {
            return refused.problems();
        }
    }

    private static List<Problem> pull(byte[] bytes) {
        try {
            new PullFileReader(new CsvFile()).table("pull.csv", FileBytes.of(bytes), HowRead.by(List.of()));
            return List.of();
        } catch (BadFileException refused) {
            return refused.problems();
        }
    }
}
