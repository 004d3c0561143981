package org.pullproof.app;

import org.pullproof.dyno.Pull;
import org.pullproof.dyno.Trace;
import org.pullproof.files.BadFileException;

/** Reads the figures of a pull out of the bytes of its kept file. */
@FunctionalInterface
public interface PullReader {
    /**
     * @throws BadFileException naming the file and the place in it
     */
    Trace read(Pull pull, byte[] bytes) throws BadFileException;
}
