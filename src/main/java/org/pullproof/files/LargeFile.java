package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;

/**
 * A file that comes from outside the session and is gone through piece by piece, for it may be larger than memory holds.
 *
 * @param path where it lies
 * @param changed when it was last written
 * @param sha256 digest of its bytes as it was met; what is kept of it is held against that
 */
public record LargeFile(Path path, LocalDateTime changed, String sha256) {
    /**
     * A table takes about 1.5 bytes of memory for each of its own while it is read, and as much while its session is open; the program
     * has a quarter of the computer's memory.
     */
    private static final int MOST_MEGABYTES = 200;

    /**
     * @throws BadFileException naming the file, if it is not there, is no plain file, cannot be read or is too large
     */
    public static LargeFile at(Path path) throws BadFileException {
        try {
            if (Files.isDirectory(path)) {
                throw new BadFileException(path.toString(), "", "this is a folder; name the files in it.");
            }
            LocalDateTime changed =
                    LocalDateTime.ofInstant(Files.getLastModifiedTime(path).toInstant(), ZoneId.systemDefault());
            BoundedFile.requirePlain(path, MOST_MEGABYTES);
            return new LargeFile(path, changed, Sha256.of(FileBytes.of(path)));
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new BadFileException(path.toString(), "", Reason.of(failure) + ".");
        }
    }

    /** Its name without the folders it lies in. */
    public String name() {
        return String.valueOf(path.getFileName());
    }

    public FileBytes bytes() {
        return FileBytes.of(path);
    }
}
