package org.pullproof.session;

import java.util.regex.Pattern;

/**
 * Something wrong in what was read.
 *
 * @param file name of the file
 * @param place where in it: "row 4, column value" or "profile.firing.order"; may be empty
 * @param message a sentence that says what would be right
 */
public record Problem(String file, String place, String message) {
    /** Signs that steer a terminal or turn the direction of reading: a file may hold them, and a message may quote it. */
    private static final Pattern STEERING =
            Pattern.compile("[\\p{Cc}\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069\\p{Cs}]");

    public Problem {
        file = still(file);
        place = still(place);
        message = still(message);
    }

    private static String still(String text) {
        return STEERING.matcher(text).replaceAll("\uFFFD");
    }

    /** One line for people: {@code readings.csv, row 4: cylinder 9 of 8: …}. */
    @Override
    public String toString() {
        return place.isEmpty() ? file + ": " + message : file + ", " + place + ": " + message;
    }
}
