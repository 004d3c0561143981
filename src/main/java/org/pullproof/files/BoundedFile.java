package org.pullproof.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a plain file whole, and never more of it than fits: a pipe would not end, a device has no end. */
final class BoundedFile {
    private static final int MEGABYTE = 1024 * 1024;

    private BoundedFile() {}

    /**
     * @param mostMegabytes more than any right file has, in units of 2^20 bytes; below 2048
     * @throws BadFileException if it is no plain file, is larger, or cannot be read
     */
    static byte[] read(Path file, int mostMegabytes) throws BadFileException {
        try {
            requirePlain(file, mostMegabytes);
            int most = mostMegabytes * MEGABYTE;
            byte[] bytes = atMost(file, most + 1);
            if (bytes.length > most) {
                throw tooLarge(file, mostMegabytes);
            }
            return bytes;
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new BadFileException(file.toString(), "", Reason.of(failure) + ".");
        }
    }

    /**
     * @param mostMegabytes more than any right file has, in units of 2^20 bytes; below 2048
     * @throws BadFileException if it is no plain file or tells that it is larger
     * @throws IOException if that cannot be found out
     */
    static void requirePlain(Path file, int mostMegabytes) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new BadFileException(file.toString(), "", "this is no plain file; name one that can be read whole.");
        }
        if (Files.size(file) > (long) mostMegabytes * MEGABYTE) {
            throw tooLarge(file, mostMegabytes);
        }
    }

    private static BadFileException tooLarge(Path file, int mostMegabytes) {
        return new BadFileException(
                file.toString(), "", "the file is larger than " + mostMegabytes + " MB; is it the right one?");
    }

    // The size told before may be wrong: some files of the system tell none.
    private static byte[] atMost(Path file, int bytes) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(bytes);
        }
    }
}
