package org.pullproof.app;

import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.Optional;
import org.pullproof.files.BadFileException;
import org.pullproof.files.NotWrittenException;
import org.pullproof.files.Reason;
import org.pullproof.files.SessionLock;

/**
 * Sees to it that one program at a time writes a session: the one that holds it open, else whoever is just doing an edit. Safe for
 * several threads.
 */
final class WriterLock {
    private static final Logger LOG = System.getLogger(WriterLock.class.getName());

    /** Writes, while nobody else may. */
    @FunctionalInterface
    interface Work<T> {
        T done() throws BadFileException;
    }

    private record Held(Path folder, SessionLock lock) {}

    private Optional<Held> held = Optional.empty();

    /**
     * Holds a session until {@link #release}; the one held before is let go.
     *
     * @throws BadFileException with a sentence if it cannot be written now
     */
    synchronized void hold(Path folder) throws BadFileException {
        release();
        held = Optional.of(new Held(real(folder), taken(folder)));
    }

    synchronized void release() {
        held.ifPresent(one -> letGo(one.lock()));
        held = Optional.empty();
    }

    /**
     * Does work on a session that nobody else may write meanwhile.
     *
     * @throws BadFileException with a sentence if another has it or the folder cannot be written
     */
    synchronized <T> T during(Path folder, Work<T> work) throws BadFileException {
        if (holds(folder)) {
            return work.done();
        }
        SessionLock lock = taken(folder);
        try {
            return work.done();
        } finally {
            letGo(lock);
        }
    }

    private boolean holds(Path folder) {
        return held.filter(one -> one.folder().equals(real(folder))).isPresent();
    }

    private static SessionLock taken(Path folder) throws BadFileException {
        try {
            return SessionLock.take(folder)
                    .orElseThrow(
                            () -> new NotWrittenException(
                                    folder.toString(),
                                    "another Pullproof has this session open for editing; close it there, then do this again."));
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new NotWrittenException(
                    folder.toString(), "nothing was written: " + Reason.of(failure) + ". " + SessionDesk.WAY_OUT);
        }
    }

    // Nothing depends on it: the system takes the lock back at the end of the program.
    private static void letGo(SessionLock lock) {
        try {
            lock.close();
        } catch (IOException failure) {
            LOG.log(Level.WARNING, "The lock of the session was not given back", failure);
        }
    }

    /** One name for a folder that has several; of one that is gone, its own. */
    private static Path real(Path folder) {
        try {
            return folder.toRealPath();
        } catch (IOException gone) {
            return folder.toAbsolutePath().normalize();
        }
    }
}
