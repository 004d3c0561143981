package org.pullproof.app;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.files.BadFileException;
import org.pullproof.health.Reading;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;

/** Puts another reading in the place of one that was mistyped; undo brings the first back. */
public final class CorrectReading {
    private final SessionDesk desk;

    public CorrectReading(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @throws IllegalArgumentException with a sentence if the session has no such reading
     */
    public OpenSession correct(OpenSession open, Reading before, Reading after) throws BadFileException {
        return desk.edit(
                open, new Edit("Correct " + ReadingNames.of(after), session -> corrected(session, before, after)));
    }

    private static Session corrected(Session session, Reading before, Reading after) {
        List<Reading> readings = new ArrayList<>(session.readings());
        int place = readings.lastIndexOf(before);
        if (place < 0) {
            throw new IllegalArgumentException("The session has no such reading of " + ReadingNames.of(before) + ".");
        }
        readings.set(place, after);
        return session.withReadings(readings);
    }
}
