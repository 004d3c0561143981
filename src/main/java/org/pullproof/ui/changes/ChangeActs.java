package org.pullproof.ui.changes;

import org.pullproof.app.AmendChange.Amendment;
import org.pullproof.app.ChangeSetup.Wanted;
import org.pullproof.ui.shell.Act;

/** What the sheet Changes does to the session. */
public interface ChangeActs {
    /** Brings the engine into another setup, new or known. */
    Act change(Wanted wanted);

    /** Puts right what is recorded of the change that made a setup, by its id. */
    Act amend(String setup, Amendment amendment);
}
