package org.pullproof.app;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.files.BadFileException;
import org.pullproof.health.Reading;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;

/** Takes one reading away; undo brings it back to its place. */
public final class RemoveReading {
    private final SessionDesk desk;

    public RemoveReading(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @throws IllegalArgumentException with a sentence if the session has no such reading
     */
    public OpenSession remove(OpenSession open, Reading reading) throws BadFileException {
        return desk.edit(open, new Edit("Remove " + ReadingNames.of(reading), session -> without(session, reading)));
    }

    private static Session without(Session session, Reading reading) {
        List<Reading> readings = new ArrayList<>(session.readings());
        if (!readings.remove(reading)) {
            throw new IllegalArgumentException("The session has no such reading of " + ReadingNames.of(reading) + ".");
        }
        return session.withReadings(readings);
    }
}
