package org.pullproof.app;

import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.PullTable;
import org.pullproof.files.BadFileException;
import org.pullproof.files.FileBytes;

/** Reads the pulls of one file. */
@FunctionalInterface
public interface PullReader {
    /**
     * @param name of the file, for messages
     * @param how what a person said of its columns and of the drum
     * @throws BadFileException naming the file and the place in it
     */
    PullTable table(String name, FileBytes bytes, HowRead how) throws BadFileException;
}
