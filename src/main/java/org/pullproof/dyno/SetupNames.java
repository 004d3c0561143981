package org.pullproof.dyno;

import java.util.List;
import org.pullproof.engine.Setup;

/** The name people call a setup by. */
final class SetupNames {
    private SetupNames() {}

    /** The setup's name; its id if it is none of those. */
    static String name(List<Setup> setups, String id) {
        return setups.stream()
                .filter(setup -> setup.id().equals(id))
                .map(Setup::name)
                .findFirst()
                .orElse(id);
    }
}
