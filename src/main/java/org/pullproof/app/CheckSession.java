package org.pullproof.app;

import java.nio.file.Path;
import java.util.List;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Problem;

/** Reads everything of a session and tells each problem; changes nothing. */
public final class CheckSession {
    private final SessionDesk desk;

    public CheckSession(SessionDesk desk) {
        this.desk = desk;
    }

    /** Every problem of the document and of its pull files; empty if all is well. */
    public List<Problem> check(Path folder) {
        try {
            return desk.open(folder).problems();
        } catch (BadFileException bad) {
            return bad.problems();
        }
    }
}
