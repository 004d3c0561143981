package org.pullproof.session;

import org.pullproof.units.Inert;

/**
 * Something wrong in what was read.
 *
 * @param file name of the file
 * @param place where in it: "row 4, column value" or "profile.firing.order"; may be empty
 * @param message a sentence that says what would be right
 */
public record Problem(String file, String place, String message) {
    public Problem {
        file = Inert.words(file);
        place = Inert.words(place);
        message = Inert.words(message);
    }

    /** One line for people: {@code readings.csv, row 4: cylinder 9 of 8: …}. */
    @Override
    public String toString() {
        return place.isEmpty() ? file + ": " + message : file + ", " + place + ": " + message;
    }
}
