package org.pullproof.app;

import java.nio.file.Path;
import org.pullproof.files.BadFileException;
import org.pullproof.files.SessionZip;

/** Hands a session on in one file, and takes one in. */
public final class ShareSession {
    private final Path sessions;

    /**
     * @param sessions the folder in which the user keeps sessions, where nothing else is said
     */
    public ShareSession(Path sessions) {
        this.sessions = sessions;
    }

    /** The folder in which the user keeps sessions, where nothing else is said. */
    public Path sessions() {
        return sessions;
    }

    /**
     * Packs a session.
     *
     * @param target ends with .zip; a file of that name is replaced
     * @return what was made of it, in a sentence
     * @throws IllegalArgumentException if the target is not called a zip
     * @throws BadFileException if there is no session, or the zip could not be written
     */
    public String share(Path session, Path target) throws BadFileException {
        if (!SessionZip.isNamed(target)) {
            throw new IllegalArgumentException(
                    "A session is shared as a zip; call it " + target.getFileName() + ".zip.");
        }
        new SessionZip(target).write(session);
        return "The session and its pull files are in " + target
                + "; who gets it can open it or drop it on the window.";
    }

    /** Whether a file is a shared session by its name. */
    public boolean isShared(Path file) {
        return SessionZip.isNamed(file);
    }

    /**
     * Unpacks a shared session into a new folder beside the user's sessions.
     *
     * @throws BadFileException if it is no session, or must not be unpacked; nothing is left behind then
     */
    public Path unpack(Path zip) throws BadFileException {
        return new SessionZip(zip).unpack(sessions);
    }

    /** What is said of a session taken in. */
    public static String unpackedTo(Path folder) {
        return "The shared session is unpacked in " + folder + "; nothing that lay there before was touched.";
    }
}
