package org.pullproof.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.Trace;
import org.pullproof.engine.EngineProfile;
import org.pullproof.files.BadFileException;
import org.pullproof.files.NotWrittenException;
import org.pullproof.files.SessionCopy;
import org.pullproof.files.SessionFolder;
import org.pullproof.session.Edit;
import org.pullproof.session.History;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;

/**
 * Opens sessions and does edits. Every edit is written to disk before its outcome is returned, so the returned document is the one
 * on disk; if an edit is refused or writing fails, document and disk are as they were. The document as it was before the first edit
 * of a sitting is kept. Nothing is written while another program writes, nor over a document that something else changed.
 */
public final class SessionDesk {
    static final String WAY_OUT =
            "Put it right, or save a copy elsewhere (Ctrl Shift S in the window); till then your work is in memory only.";

    private final PullReader reader;
    private final Clock clock;
    private final Function<Path, SessionFolder> folders;
    private final WriterLock lock = new WriterLock();

    public SessionDesk(PullReader reader, Clock clock) {
        this(reader, clock, SessionFolder::new);
    }

    /**
     * @param folders the folder at a path; a test hands in one that fails
     */
    SessionDesk(PullReader reader, Clock clock, Function<Path, SessionFolder> folders) {
        this.reader = reader;
        this.clock = clock;
        this.folders = folders;
    }

    /**
     * Makes a session in a folder, which is made too if it is not there.
     *
     * @throws BadFileException if a session lies there already, or it cannot be written
     */
    public OpenSession create(Path folder, String carName, EngineProfile profile) throws BadFileException {
        SessionFolder place = folders.apply(folder);
        Session session = Session.begin(carName, profile);
        place.make();
        return lock.during(folder, () -> {
            refuseTaken(place);
            place.write(session);
            return new OpenSession(folder, History.of(session), Map.of(), List.of());
        });
    }

    /**
     * Opens a session with the figures of its pulls. A pull whose file is lost or unreadable is told in the problems and does not stop
     * the rest.
     *
     * @throws BadFileException if the document itself cannot be read
     */
    public OpenSession open(Path folder) throws BadFileException {
        return withTraces(folder, History.of(folders.apply(folder).read()), Map.of());
    }

    /**
     * Opens a session and holds it, so that no other program writes it until it is {@linkplain #letGo() let go}; the one held before
     * is let go. One that cannot be held is opened to be looked at, and its problems begin with the reason.
     *
     * @throws BadFileException if the document itself cannot be read
     */
    public OpenSession openToEdit(Path folder) throws BadFileException {
        letGo();
        Optional<Problem> notHeld = heldOrWhyNot(folder);
        try {
            OpenSession open = open(folder);
            List<Problem> problems =
                    Stream.concat(notHeld.stream(), open.problems().stream()).toList();
            return new OpenSession(folder, open.history(), open.traces(), problems);
        } catch (BadFileException unreadable) {
            letGo();
            throw unreadable;
        }
    }

    private Optional<Problem> heldOrWhyNot(Path folder) {
        try {
            lock.hold(folder);
            return Optional.empty();
        } catch (BadFileException inTheWay) {
            return Optional.of(new Problem(
                    folder.toString(),
                    "",
                    "it is open to be looked at: " + inTheWay.problems().get(0).message()));
        }
    }

    /** Lets the session that is held go, if there is one. */
    public void letGo() {
        lock.release();
    }

    /**
     * Does an edit and writes the outcome.
     *
     * @throws IllegalArgumentException with a sentence if the edit is refused
     * @throws BadFileException if the outcome could not be written
     */
    public OpenSession edit(OpenSession open, Edit edit) throws BadFileException {
        return edit(open, edit, Map.of());
    }

    /**
     * The same, with the figures of pulls that the edit brings and that were read on the way.
     *
     * @throws IllegalArgumentException with a sentence if the edit is refused
     * @throws BadFileException if the outcome could not be written
     */
    OpenSession edit(OpenSession open, Edit edit, Map<Pull, Trace> read) throws BadFileException {
        return written(open, open.history().edit(edit), read);
    }

    /** Takes the last edit back; the same session if there is none. */
    public OpenSession undo(OpenSession open) throws BadFileException {
        return written(open, open.history().undo(), Map.of());
    }

    /** Does the last undone edit again; the same session if there is none. */
    public OpenSession redo(OpenSession open) throws BadFileException {
        return written(open, open.history().redo(), Map.of());
    }

    private OpenSession written(OpenSession open, History next, Map<Pull, Trace> read) throws BadFileException {
        if (next.present().equals(open.session())) {
            return new OpenSession(open.folder(), next, open.traces(), open.problems());
        }
        lock.during(open.folder(), () -> replaced(open, next));
        Map<Pull, Trace> known = new HashMap<>(known(open));
        known.putAll(read);
        return withTraces(open.folder(), next, known);
    }

    private History replaced(OpenSession open, History next) throws BadFileException {
        SessionFolder place = unchanged(open);
        if (open.isUntouched()) {
            place.keepVersion(LocalDateTime.now(clock));
        }
        place.write(next.present());
        return next;
    }

    /** The folder, if the document in it is still the one that is open. */
    private SessionFolder unchanged(OpenSession open) throws BadFileException {
        SessionFolder place = folders.apply(open.folder());
        if (!place.holdsSession()) {
            throw new NotWrittenException(
                    open.folder().toString(), "nothing was written, for the session is no longer here. " + WAY_OUT);
        }
        if (!place.says(open.session())) {
            throw new NotWrittenException(
                    open.folder().toString(),
                    "something else changed the session on disk since it was read here, and nothing was written over it. Read it"
                            + " again (Ctrl R in the window), or save a copy of what is here (Ctrl Shift S).");
        }
        return place;
    }

    /**
     * Takes the document as it is on disk now, after something else changed it. Undo brings back what was open before.
     *
     * @throws BadFileException if it cannot be read
     */
    public OpenSession readAgain(OpenSession open) throws BadFileException {
        Session onDisk = folders.apply(open.folder()).read();
        if (onDisk.equals(open.session())) {
            return open;
        }
        History next = open.history().edit(new Edit("Read again from the disk", before -> onDisk));
        return withTraces(open.folder(), next, known(open));
    }

    /**
     * Saves what is open in another folder, with its pull files and kept versions as far as they can be read, and goes on there: undo
     * works on, and the copy is held instead of the old folder.
     *
     * @return the copy; its problems tell what could not be copied
     * @throws BadFileException if a session lies there already, or it cannot be written
     */
    public OpenSession copyTo(OpenSession open, Path folder) throws BadFileException {
        SessionFolder place = folders.apply(folder);
        place.make();
        List<Problem> left = lock.during(folder, () -> {
            refuseTaken(place);
            List<Problem> notCopied = SessionCopy.beside(open.folder(), folder);
            place.write(open.session());
            return notCopied;
        });
        lock.hold(folder);
        return new OpenSession(folder, open.history(), open.traces(), left);
    }

    private static void refuseTaken(SessionFolder place) throws BadFileException {
        if (place.holdsSession()) {
            throw new BadFileException(
                    place.path().toString(), "", "a session lies here already; name another folder, or open this one.");
        }
    }

    /**
     * Keeps the present document beside those of earlier sittings.
     *
     * @throws BadFileException if it could not be kept
     */
    void keepPresent(OpenSession open) throws BadFileException {
        lock.during(open.folder(), () -> {
            unchanged(open).keepVersion(LocalDateTime.now(clock));
            return open;
        });
    }

    /** Keeps a file beside the document. */
    @FunctionalInterface
    interface Keeping<T> {
        T in(SessionFolder folder) throws BadFileException;
    }

    /**
     * Keeps a file in the session's folder, while nobody else writes there.
     *
     * @throws BadFileException if it could not be kept
     */
    <T> T keep(OpenSession open, Keeping<T> file) throws BadFileException {
        return lock.during(open.folder(), () -> file.in(folders.apply(open.folder())));
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
        PullFigures figures = PullFigures.of(pulls(history.present()), known, folders.apply(folder), reader);
        return new OpenSession(folder, history, figures.traces(), figures.problems());
    }
}
