package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.pullproof.session.Problem;

/** Copies what lies beside the document of a session: its pull files, photographs and the documents kept. */
public final class SessionCopy {
    private static final List<String> BESIDE = List.of("pulls", "pictures", "kept");

    private SessionCopy() {}

    /**
     * Copies what can be copied; a file that is there already stays as it is.
     *
     * @return what could not be copied, with what to do
     */
    public static List<Problem> beside(Path from, Path to) {
        List<Problem> left = new ArrayList<>();
        for (String name : BESIDE) {
            try {
                copy(from.resolve(name), to.resolve(name));
            } catch (IOException failure) {
                left.add(left(from.resolve(name), Reason.of(failure)));
            }
        }
        if (!Files.isDirectory(from)) {
            left.add(left(from, "the folder is not there"));
        }
        return left;
    }

    private static Problem left(Path place, String reason) {
        return new Problem(
                place.toString(),
                "",
                reason + ", so the copy is without its files; put them in the folder of that name in the copy.");
    }

    private static void copy(Path from, Path to) throws IOException {
        if (!Files.isDirectory(from)) {
            return;
        }
        List<Path> files;
        try (Stream<Path> all = Files.list(from)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        Flushed.makeFolder(to);
        for (Path file : files) {
            Path target = to.resolve(file.getFileName());
            if (!Files.exists(target)) {
                new WholeFile().write(target, part -> Files.copy(file, part));
            }
        }
    }
}
