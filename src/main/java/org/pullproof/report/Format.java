package org.pullproof.report;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A way to write a report as a file for people. */
public enum Format {
    TEXT("txt"),
    HTML("html"),
    PDF("pdf");

    private final String ending;

    Format(String ending) {
        this.ending = ending;
    }

    /** The ending of its files, without the point. */
    public String ending() {
        return ending;
    }

    /** The format that the ending of a file's name asks for. */
    public static Optional<Format> of(String fileName) {
        String name = fileName.toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(format -> name.endsWith("." + format.ending))
                .findFirst();
    }
}
