package org.pullproof.ui.values;

import java.util.Map;
import java.util.Optional;
import org.pullproof.ui.shell.Act;

/** What the page of the values does to the session. */
public interface ValueActs {
    /** Puts values in the place of the program's own; an empty one goes back. */
    Act edit(Map<String, Optional<Double>> values);

    /** Goes back to the program's own values throughout. */
    Act reset();
}
