package org.pullproof.app;

import java.nio.file.Path;
import java.util.Optional;

/** Opens the window; the command line knows no more of the screen than this. */
@FunctionalInterface
public interface Window {
    /**
     * Shows the window and returns when it is closed.
     *
     * @param session the session to show; empty for the first start
     */
    void open(Toolbox tools, Optional<Path> session);
}
