package org.pullproof.app;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.files.BadFileException;
import org.pullproof.health.Reading;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;

/** Keeps one reading, after those there are. */
public final class RecordReading {
    private final SessionDesk desk;

    public RecordReading(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @throws IllegalArgumentException with a sentence if the engine has no such cylinder
     */
    public OpenSession record(OpenSession open, Reading reading) throws BadFileException {
        return desk.edit(
                open, new Edit("Record " + ReadingNames.of(reading), session -> with(session, List.of(reading))));
    }

    /**
     * Keeps several readings as one edit, all or none.
     *
     * @throws IllegalArgumentException with a sentence if the engine has no such cylinder
     */
    public OpenSession recordAll(OpenSession open, List<Reading> readings) throws BadFileException {
        return desk.edit(open, adding(readings));
    }

    static Edit adding(List<Reading> readings) {
        String name = readings.size() == 1 ? "Add a reading" : "Add " + readings.size() + " readings";
        return new Edit(name, session -> with(session, readings));
    }

    /** The session with more readings, each of a cylinder this engine has. */
    static Session with(Session session, List<Reading> more) {
        more.forEach(reading ->
                reading.cylinder().ifPresent(cylinder -> session.profile().requireCylinder(cylinder)));
        List<Reading> readings = new ArrayList<>(session.readings());
        readings.addAll(more);
        return session.withReadings(readings);
    }
}
