package org.pullproof.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Optional;

/** Says in words why a file could not be read or written. */
public final class Reason {
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
        return told(failure).orElse("it could not be read or written");
    }

    private static Optional<String> told(IOException failure) {
        return failure instanceof FileSystemException system
                ? Optional.ofNullable(system.getReason())
                : Optional.ofNullable(failure.getMessage());
    }
}
