package org.pullproof.ui.dynoday;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Asks a person for pull files. */
@FunctionalInterface
public interface PullFileChooser {
    /** The files chosen, in their order by name; empty if the person turned back. */
    List<Path> choose();

    /** Asks for a folder to watch; empty if none was chosen. */
    default Optional<Path> folder() {
        return Optional.empty();
    }
}
