package org.pullproof.files;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** The bytes of a file, gone through from the first as often as asked; they need never all be held. */
@FunctionalInterface
public interface FileBytes {
    /** A stream at the first byte, for the caller to close. */
    InputStream open() throws IOException;

    static FileBytes of(byte[] bytes) {
        byte[] own = bytes.clone();
        return () -> new ByteArrayInputStream(own);
    }

    /** Those of a file on the disk, as it is each time it is opened. */
    static FileBytes of(Path file) {
        return () -> Files.newInputStream(file);
    }
}
