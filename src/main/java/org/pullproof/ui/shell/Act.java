package org.pullproof.ui.shell;

import org.pullproof.app.OpenSession;

/** Something a person does to the open session. Runs away from the screen and touches nothing of it. */
@FunctionalInterface
public interface Act {
    /**
     * @return the session after it, already on the disk
     * @throws Exception with a sentence for people if it cannot be done; nothing is changed then
     */
    OpenSession on(OpenSession open) throws Exception;
}
