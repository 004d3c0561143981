package org.pullproof.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Optional;
import java.util.regex.Pattern;

/** Says in words why a file could not be read or written. */
public final class Reason {
    /** As Linux, macOS and Windows say it in English; elsewhere the system's own words stand. */
    private static final Pattern FULL =
            Pattern.compile("No space left on device|Disk quota exceeded|There is not enough space on the disk");

    private static final Pattern READ_ONLY = Pattern.compile("Read-only file system|The media is write protected");

    private Reason() {}

    /** A few words without a stop: "there is no such file or folder". */
    public static String of(IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (failure instanceof AccessDeniedException) {
            return "this user may not read or write it";
        }
        if (failure instanceof FileAlreadyExistsException) {
            return "something of that name is already there";
        }
        if (failure instanceof NotDirectoryException) {
            return "it is a file, not a folder";
        }
        String told = told(failure).orElse("it could not be read or written");
        if (FULL.matcher(told).matches()) {
            return "the disk is full";
        }
        return READ_ONLY.matcher(told).matches() ? "the disk may only be read, not written" : told;
    }

    private static Optional<String> told(IOException failure) {
        return failure instanceof FileSystemException system
                ? Optional.ofNullable(system.getReason())
                : Optional.ofNullable(failure.getMessage());
    }
}
