package org.pullproof.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * The right to write a session, which one program at a time can have. The system gives it back when the program ends, also by a
 * kill; the file {@code session.lock} stays behind, empty, and means nothing by itself.
 */
public final class SessionLock implements AutoCloseable {
    private static final String FILE = "session.lock";

    private final FileChannel channel;

    private SessionLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Takes the right and clears away what a killed program left half written.
     *
     * @return empty if another has it
     * @throws IOException if the folder is not there or may not be written
     */
    public static Optional<SessionLock> take(Path folder) throws IOException {
        FileChannel channel =
                FileChannel.open(folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            if (channel.tryLock() != null) {
                new SessionFolder(folder).removeParts();
                return Optional.of(new SessionLock(channel));
            }
        } catch (OverlappingFileLockException heldInThisProgram) {
            channel.close();
            return Optional.empty();
        } catch (IOException failure) {
            channel.close();
            throw failure;
        }
        channel.close();
        return Optional.empty();
    }

    /** Gives the right back. */
    @Override
    public void close() throws IOException {
        channel.close();
    }
}
