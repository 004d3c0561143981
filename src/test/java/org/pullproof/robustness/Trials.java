package org.pullproof.robustness;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.pullproof.testing.FileTree;

/** Tries by the thousand what the tests try a few times in every build. See {@code docs/robustness.md}. */
final class Trials {
    private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.UTF_8);

    /** After so many, what came of it so far is told. */
    private static final int SHARE = 50;

    private Trials() {}

    /** {@code kills 1000 1}: which trial, how many times, from which seed. */
    public static void main(String[] arguments) throws Exception {
        int times = Integer.parseInt(arguments[1]);
        long seed = Long.parseLong(arguments[2]);
        List<String> wrong = switch (arguments[0]) {
            case "kills" -> kills(times, seed);
            case "cuts" -> cuts(times, seed);
            case "files" -> files(times, seed);
            default ->
                throw new IllegalArgumentException(
                        "There is no trial \"" + arguments[0] + "\"; there are kills, cuts, files.");
        };
        wrong.forEach(OUT::println);
        System.exit(wrong.isEmpty() ? 0 : 1);
    }

    private static List<String> kills(int times, long seed) throws Exception {
        Path folder = Files.createTempDirectory("pullproof-kills");
        FileTree.copy(Path.of("demo-sessions", "grey-coupe"), folder.resolve("car"));
        List<String> wrong = new ArrayList<>();
        int edits = 0;
        int inFlight = 0;
        for (int done = 0; done < times; done += SHARE) {
            Kills.Outcome outcome = new Kills(folder.resolve("car"), seed + done).kill(Math.min(SHARE, times - done));
            wrong.addAll(outcome.wrong());
            edits += outcome.edits();
            inFlight += outcome.inFlight();
            OUT.printf(
                    "%d kills, %d edits, %d in flight written all the same; lost or spoiled: %d%n",
                    Math.min(done + SHARE, times), edits, inFlight, wrong.size());
        }
        FileTree.delete(folder);
        return wrong;
    }

    private static List<String> cuts(int times, long seed) throws Exception {
        Path folder = Files.createTempDirectory("pullproof-cuts");
        Cuts cuts = new Cuts(folder);
        List<String> wrong = new ArrayList<>();
        for (int done = 0; done < times; done++) {
            wrong.addAll(cuts.cut(1 + (seed + done) % (cuts.steps() + 1), seed + done));
        }
        OUT.printf("%d power cuts in a day of %d steps; lost or half there: %d%n", times, cuts.steps(), wrong.size());
        FileTree.delete(folder);
        return wrong;
    }

    private static List<String> files(int times, long seed) throws Exception {
        Path folder = Files.createTempDirectory("pullproof-files");
        try (HostileFiles files = new HostileFiles(folder)) {
            HostileFiles.Outcome outcome = files.read(times, seed);
            OUT.printf(
                    "%d spoilt files, %d taken, %d refused by a sentence; otherwise: %d%n",
                    times, outcome.taken(), outcome.refused(), outcome.wrong().size());
            return outcome.wrong();
        } finally {
            FileTree.delete(folder);
        }
    }
}
