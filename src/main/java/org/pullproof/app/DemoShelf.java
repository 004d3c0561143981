package org.pullproof.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.pullproof.files.BadFileException;
import org.pullproof.files.Reason;
import org.pullproof.files.SessionFolder;
import org.pullproof.files.WholeFolder;

/** The demo sessions that come with the program. A demo is worked on as a copy, so that it stays as it came. */
public final class DemoShelf {
    private static final String FIRST = "grey-coupe";

    private final Path demos;
    private final Path copies;

    /**
     * @param demos the folder with the demos of the program
     * @param copies the user's folder in which copies are made
     */
    public DemoShelf(Path demos, Path copies) {
        this.demos = demos;
        this.copies = copies;
    }

    /** The demo to look at first. */
    public Path first() {
        return demos.resolve(FIRST);
    }

    /** Every demo in order of name; empty if the program came without. */
    public List<Path> all() {
        try (Stream<Path> folders = Files.list(demos)) {
            return folders.filter(folder -> new SessionFolder(folder).holdsSession())
                    .sorted()
                    .toList();
        } catch (IOException noDemos) {
            return List.of();
        }
    }

    /** Whether a session is one of the demos themselves. */
    public boolean holds(Path session) {
        return real(session).startsWith(real(demos));
    }

    /** Whether a session is the user's copy of a demo. */
    public boolean isCopy(Path session) {
        return real(session).startsWith(real(copies));
    }

    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException notThere) {
            return path.toAbsolutePath().normalize();
        }
    }

    /**
     * The user's copy of a demo: the one made before, else a new one, which is there whole or not at all.
     *
     * @throws BadFileException if it could not be made
     */
    public Path copy(Path demo) throws BadFileException {
        Path copy = copies.resolve(real(demo).getFileName());
        if (new SessionFolder(copy).holdsSession()) {
            return copy;
        }
        try {
            WholeFolder.make(copy, "copying-", empty -> copyTree(demo, empty));
            return copy;
        } catch (IOException failure) {
            throw new BadFileException(
                    copy.toString(), "", "the copy of the demo could not be made: " + Reason.of(failure) + ".");
        }
    }

    private static void copyTree(Path from, Path to) throws IOException {
        List<Path> all;
        try (Stream<Path> tree = Files.walk(from)) {
            all = tree.sorted(Comparator.naturalOrder()).toList();
        }
        for (Path one : all) {
            Path target = to.resolve(from.relativize(one));
            if (Files.isDirectory(one)) {
                Files.createDirectories(target);
            } else {
                Files.copy(one, target);
            }
        }
    }
}
