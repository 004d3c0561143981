package org.pullproof.app;

import org.pullproof.dyno.DynoAssessor;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.session.Session;
import org.pullproof.units.Figures;

/** Tells what the pulls of a session amount to. */
public final class AssessDyno {
    private final DynoAssessor assessor;

    public AssessDyno(DynoAssessor assessor) {
        this.assessor = assessor;
    }

    /**
     * @param figures how its sentences write figures
     */
    public DynoFindings of(OpenSession open, Figures figures) {
        Session session = open.session();
        return assessor.assess(
                session.days(),
                session.setups(),
                open.traces(),
                session.standard(),
                session.car().band(),
                figures);
    }
}
