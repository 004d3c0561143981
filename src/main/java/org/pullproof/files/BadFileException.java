package org.pullproof.files;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.pullproof.session.Problem;

/** A file that was read and has something wrong in it; nothing was taken in. */
public class BadFileException extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public BadFileException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public BadFileException(String file, String place, String message) {
        this(List.of(new Problem(file, place, message)));
    }

    /** Every problem, at least one. */
    public final List<Problem> problems() {
        return problems;
    }
}
