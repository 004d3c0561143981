package org.pullproof.app;

import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Appraiser;
import org.pullproof.units.Figures;

/** Tells what an open session amounts to. */
public final class Appraise {
    private final Appraiser appraiser;

    public Appraise(Appraiser appraiser) {
        this.appraiser = appraiser;
    }

    /**
     * @param figures how its sentences write figures
     */
    public Appraisal of(OpenSession open, Figures figures) {
        return appraiser.appraise(open.session(), open.traces(), figures);
    }
}
