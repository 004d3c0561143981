package org.pullproof.ui.changes;

import org.pullproof.app.ChangeSetup.Wanted;
import org.pullproof.ui.shell.Act;

/** What the sheet Changes does to the session. */
@FunctionalInterface
public interface ChangeActs {
    /** Brings the engine into another setup, new or known. */
    Act change(Wanted wanted);
}
