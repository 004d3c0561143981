package org.pullproof.ui.health;

import org.pullproof.health.Reading;
import org.pullproof.ui.shell.Act;

/** What the sheet Health does to the session. */
public interface HealthActs {
    /** Adds a reading to those there are. */
    Act record(Reading reading);

    /** Puts another reading in the place of a mistyped one. */
    Act correct(Reading before, Reading after);

    /** Takes a reading away; undo brings it back. */
    Act remove(Reading reading);
}
