package org.pullproof.ui.health;

import java.util.List;
import org.pullproof.health.Reading;
import org.pullproof.ui.shell.Act;

/** What the sheet Health does to the session. */
public interface HealthActs {
    /** Adds a reading to those there are. */
    Act record(Reading reading);

    /** Adds readings that came together, as one edit. */
    Act recordAll(List<Reading> readings);

    /** Puts another reading in the place of a mistyped one. */
    Act correct(Reading before, Reading after);

    /** Takes a reading away; undo brings it back. */
    Act remove(Reading reading);
}
