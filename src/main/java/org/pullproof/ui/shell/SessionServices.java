package org.pullproof.ui.shell;

import org.pullproof.advice.Appraisal;
import org.pullproof.app.OpenSession;
import org.pullproof.units.Figures;

/**
 * What the view-model of an open session needs of the program.
 *
 * @param undo takes the last edit back
 * @param redo does the last undone edit again
 * @param appraiser computes what the session amounts to
 */
public record SessionServices(Act undo, Act redo, Appraiser appraiser) {
    /** Computes what a session amounts to; slow, so never on the FX thread. */
    @FunctionalInterface
    public interface Appraiser {
        Appraisal appraise(OpenSession open, Figures figures);
    }
}
