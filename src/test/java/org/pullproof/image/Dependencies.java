package org.pullproof.image;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/** The libraries as {@code docs/dependencies.md} lists them, and as they are. */
final class Dependencies {
    private static final Path PAGE = Path.of("docs", "dependencies.md");

    private Dependencies() {}

    /**
     * One line of the page.
     *
     * @param jar the name of its file
     * @param licence by its SPDX name
     * @param part whether it is part of the program, else it serves the tests
     */
    record Library(String jar, String licence, boolean part) {}

    static List<Library> listed() {
        try {
            return Files.readAllLines(PAGE).stream()
                    .filter(line -> line.startsWith("| `"))
                    .map(line -> line.split("\\|", -1))
                    .map(cell -> new Library(
                            cell[1].strip().replace("`", ""),
                            cell[2].strip(),
                            cell[3].strip().equals("program")))
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(PAGE + " should list every library", unreadable);
        }
    }

    /** The files of the libraries that are part of the program. */
    static List<String> ofTheProgram() {
        return listed().stream().filter(Library::part).map(Library::jar).toList();
    }

    /** The files of the libraries on the class path of this test; of JavaFX the one without what is special to a system. */
    static List<String> there() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .filter(entry -> entry.endsWith(".jar"))
                .map(entry -> String.valueOf(Path.of(entry).getFileName()))
                .filter(Predicate.not(name -> name.matches("javafx-.*-(linux|win|mac).*\\.jar")))
                .filter(name -> !name.startsWith("surefire"))
                .toList();
    }
}
