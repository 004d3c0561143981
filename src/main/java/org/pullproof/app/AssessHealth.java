package org.pullproof.app;

import org.pullproof.health.HealthAssessor;
import org.pullproof.health.HealthFindings;
import org.pullproof.session.Session;
import org.pullproof.units.Figures;

/** Tells what the readings of a session amount to. */
public final class AssessHealth {
    private final HealthAssessor assessor;

    public AssessHealth(HealthAssessor assessor) {
        this.assessor = assessor;
    }

    /**
     * @param figures how its sentences write figures
     */
    public HealthFindings of(OpenSession open, Figures figures) {
        Session session = open.session();
        return assessor.assess(session.readings(), session.profile(), session.car(), figures);
    }
}
