package org.pullproof.files;

/** A session that could not be written, now; what is on the disk is as it was, and the same may well be done later. */
public final class NotWrittenException extends BadFileException {
    private static final long serialVersionUID = 1L;

    public NotWrittenException(String file, String message) {
        super(file, "", message);
    }
}
