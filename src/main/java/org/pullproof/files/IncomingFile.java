package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;

/** A file that comes from outside the session, read whole. Immutable. */
public final class IncomingFile {
    /** More than any pull of a real dyno day; a guard against the wrong file. */
    private static final int MOST_MEGABYTES = 50;

    private final String name;
    private final byte[] bytes;
    private final LocalDateTime changed;

    private IncomingFile(String name, byte[] bytes, LocalDateTime changed) {
        this.name = name;
        this.bytes = bytes;
        this.changed = changed;
    }

    /**
     * @throws BadFileException naming the file, if it is not there, cannot be read or is too large
     */
    public static IncomingFile read(Path file) throws BadFileException {
        try {
            if (Files.isDirectory(file)) {
                throw new BadFileException(file.toString(), "", "this is a folder; name the files in it.");
            }
            LocalDateTime changed =
                    LocalDateTime.ofInstant(Files.getLastModifiedTime(file).toInstant(), ZoneId.systemDefault());
            return new IncomingFile(
                    String.valueOf(file.getFileName()), BoundedFile.read(file, MOST_MEGABYTES), changed);
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new BadFileException(file.toString(), "", Reason.of(failure) + ".");
        }
    }

    /** Its name without the folders it lies in. */
    public String name() {
        return name;
    }

    public byte[] bytes() {
        return Arrays.copyOf(bytes, bytes.length);
    }

    /** When it was last written. */
    public LocalDateTime changed() {
        return changed;
    }
}
