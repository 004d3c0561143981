package org.pullproof.app;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.pullproof.files.FileBytes;

/**
 * The bytes of a file until somebody stops the work; from then on they cannot be read.
 *
 * @param bytes of the file
 * @param progress tells whether the work is stopped
 */
record StoppableBytes(FileBytes bytes, Progress progress) implements FileBytes {
    @Override
    public InputStream open() throws IOException {
        return new FilterInputStream(bytes.open()) {
            @Override
            public int read() throws IOException {
                requireGoing();
                return super.read();
            }

            @Override
            public int read(byte[] buffer, int from, int most) throws IOException {
                requireGoing();
                return super.read(buffer, from, most);
            }
        };
    }

    private void requireGoing() throws IOException {
        if (progress.stopped()) {
            throw new IOException("reading was stopped");
        }
    }
}
