package org.pullproof.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.Trace;
import org.pullproof.engine.EngineProfile;
import org.pullproof.files.BadFileException;
import org.pullproof.files.SessionFolder;
import org.pullproof.session.Edit;
import org.pullproof.session.History;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;

/**
 * Opens sessions and does edits. Every edit is written to disk before its outcome is returned, so the returned document is the one
 * on disk; if an edit is refused or writing fails, document and disk are as they were.
 */
public final class SessionDesk {
    private final PullReader reader;

    public SessionDesk(PullReader reader) {
        this.reader = reader;
    }

    /**
     * Makes a session in a folder, which is made too if it is not there.
     *
     * @throws BadFileException if a session lies there already, or it cannot be written
     */
    public OpenSession create(Path folder, String carName, EngineProfile profile) throws BadFileException {
        SessionFolder place = new SessionFolder(folder);
        if (place.holdsSession()) {
            throw new BadFileException(
                    folder.toString(), "", "a session lies here already; name another folder, or open this one.");
        }
        Session session = Session.begin(carName, profile);
        place.write(session);
        return new OpenSession(folder, History.of(session), Map.of(), List.of());
    }

    /**
     * Opens a session with the figures of its pulls. A pull whose file is lost or unreadable is told in the problems and does not stop
     * the rest.
     *
     * @throws BadFileException if the document itself cannot be read
     */
    public OpenSession open(Path folder) throws BadFileException {
        return withTraces(folder, History.of(new SessionFolder(folder).read()), Map.of());
    }

    /**
     * Does an edit and writes the outcome.
     *
     * @throws IllegalArgumentException with a sentence if the edit is refused
     * @throws BadFileException if the outcome could not be written
     */
    public OpenSession edit(OpenSession open, Edit edit) throws BadFileException {
        return written(open, open.history().edit(edit));
    }

    /** Takes the last edit back; the same session if there is none. */
    public OpenSession undo(OpenSession open) throws BadFileException {
        return written(open, open.history().undo());
    }

    /** Does the last undone edit again; the same session if there is none. */
    public OpenSession redo(OpenSession open) throws BadFileException {
        return written(open, open.history().redo());
    }

    private OpenSession written(OpenSession open, History next) throws BadFileException {
        if (next.present().equals(open.session())) {
            return new OpenSession(open.folder(), next, open.traces(), open.problems());
        }
        new SessionFolder(open.folder()).write(next.present());
        return withTraces(open.folder(), next, known(open));
    }

    /** Traces already read, by the whole pull: the same name may stand for another file after undo. */
    private static Map<Pull, Trace> known(OpenSession open) {
        return pulls(open.session()).stream()
                .filter(pull -> open.traces().containsKey(pull.id()))
                .collect(Collectors.toMap(pull -> pull, pull -> open.traces().get(pull.id())));
    }

    private static List<Pull> pulls(Session session) {
        return session.days().stream().flatMap(day -> day.pulls().stream()).toList();
    }

    private OpenSession withTraces(Path folder, History history, Map<Pull, Trace> known) {
        SessionFolder place = new SessionFolder(folder);
        Map<String, Trace> traces = new HashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (Pull pull : pulls(history.present())) {
            try {
                Trace trace = known.get(pull);
                traces.put(pull.id(), trace != null ? trace : reader.read(pull, place.bytes(pull.file())));
            } catch (BadFileException bad) {
                problems.addAll(bad.problems());
            }
        }
        return new OpenSession(folder, history, traces, problems);
    }
}
