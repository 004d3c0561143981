package org.pullproof.app;

import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.tuneup.PlugRecord;

/** Keeps what is known of one plug. */
public final class RecordPlug {
    private final SessionDesk desk;

    public RecordPlug(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @throws IllegalArgumentException with a sentence if the engine has no such cylinder
     */
    public OpenSession record(OpenSession open, PlugRecord plug) throws BadFileException {
        return desk.edit(open, new Edit("Record plug, cylinder " + plug.cylinder(), session -> with(session, plug)));
    }

    private static Session with(Session session, PlugRecord plug) {
        session.profile().requireCylinder(plug.cylinder());
        return session.withTuneUp(session.tuneUp().withPlug(plug));
    }
}
