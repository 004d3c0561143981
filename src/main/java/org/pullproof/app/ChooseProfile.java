package org.pullproof.app;

import org.pullproof.engine.EngineProfile;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;

/** Gives the session another engine profile. */
public final class ChooseProfile {
    private final SessionDesk desk;

    public ChooseProfile(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @throws IllegalArgumentException with a sentence if something is recorded of a cylinder the new engine lacks
     */
    public OpenSession choose(OpenSession open, EngineProfile profile) throws BadFileException {
        return desk.edit(open, new Edit("Choose engine " + profile.name(), session -> with(session, profile)));
    }

    private static Session with(Session session, EngineProfile profile) {
        session.readings().forEach(reading -> reading.cylinder().ifPresent(profile::requireCylinder));
        session.tuneUp().plugs().forEach(plug -> profile.requireCylinder(plug.cylinder()));
        return session.withProfile(profile);
    }
}
