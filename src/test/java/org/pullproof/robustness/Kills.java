package org.pullproof.robustness;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.pullproof.app.OpenSession;
import org.pullproof.app.PullFileReader;
import org.pullproof.app.SessionDesk;
import org.pullproof.files.BadFileException;
import org.pullproof.files.CsvFile;
import org.pullproof.files.KeptVersion;
import org.pullproof.files.SessionFolder;

/** Kills a {@link Scribbler} again and again at instants nobody chose, and looks at what is left each time. */
final class Kills {
    private static final int LONGEST_MILLIS = 250;
    private static final int LINE = Scribbler.DONE.length() + 9;

    private final Path folder;
    private final Random random;
    private final SessionDesk desk = new SessionDesk(new PullFileReader(new CsvFile()), Clock.system(ZoneOffset.UTC));

    /**
     * @param folder of a session that may be spoiled
     */
    Kills(Path folder, long seed) {
        this.folder = folder;
        this.random = new Random(seed);
    }

    /**
     * @param edits that were made and acknowledged
     * @param inFlight kills after which the edit that was being written was there too
     * @param wrong what was lost or spoiled, in words; empty if all went well
     */
    record Outcome(int edits, int inFlight, List<String> wrong) {}

    Outcome kill(int times) throws IOException, InterruptedException {
        List<String> wrong = new ArrayList<>();
        int edits = 0;
        int inFlight = 0;
        for (int kill = 1; kill <= times; kill++) {
            int before = Scribbler.miles(desk.open(folder).session());
            int acknowledged = killOne(before);
            edits += acknowledged - before;
            try {
                int found = Scribbler.miles(desk.open(folder).session());
                inFlight += found == acknowledged + 1 ? 1 : 0;
                wrong.addAll(look(acknowledged, found));
            } catch (BadFileException lost) {
                wrong.add("kill " + kill + ": " + lost.getMessage());
                return new Outcome(edits, inFlight, wrong);
            }
        }
        return new Outcome(edits, inFlight, wrong);
    }

    /** The number of the last edit that was told to be done. */
    private int killOne(int before) throws IOException, InterruptedException {
        Process scribbler = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-classpath",
                        System.getProperty("java.class.path"),
                        Scribbler.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        int last = before;
        try (BufferedReader told = scribbler.inputReader()) {
            if (told.readLine() == null) {
                throw new IllegalStateException("The scribbler did not begin");
            }
            last++;
            scribbler.waitFor(random.nextInt(LONGEST_MILLIS), TimeUnit.MILLISECONDS);
            if (!scribbler.isAlive()) {
                throw new IllegalStateException("The scribbler stopped before it was killed");
            }
            // by its handle: Process.destroyForcibly would throw away what was told and not read yet
            scribbler.toHandle().destroyForcibly();
            for (String line = told.readLine(); line != null; line = told.readLine()) {
                last = line.length() == LINE ? Integer.parseInt(line.substring(Scribbler.DONE.length())) : last;
            }
        } finally {
            scribbler.destroyForcibly().waitFor();
        }
        return last;
    }

    private List<String> look(int acknowledged, int found) throws IOException {
        List<String> wrong = new ArrayList<>();
        if (found != acknowledged && found != acknowledged + 1) {
            wrong.add("edit " + acknowledged + " was told to be done, the session has " + found);
        }
        OpenSession open = desk.openToEdit(folder);
        open.problems().forEach(problem -> wrong.add(problem.toString()));
        desk.letGo();
        SessionFolder session = new SessionFolder(folder);
        List<KeptVersion> versions = session.versions();
        if (versions.size() > 11) {
            wrong.add(versions.size() + " versions are kept");
        }
        for (int i = 0; i < versions.size(); i++) {
            if (i > 0 && versions.get(i).number() >= versions.get(i - 1).number()) {
                wrong.add("version " + versions.get(i).name() + " is there twice");
            }
            session.read(versions.get(i));
        }
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(file -> file.toString().endsWith(".part")).forEach(part -> wrong.add(part + " was left"));
        }
        return wrong;
    }
}
