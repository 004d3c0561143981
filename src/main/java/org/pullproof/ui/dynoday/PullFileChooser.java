package org.pullproof.ui.dynoday;

import java.nio.file.Path;
import java.util.List;

/** Asks a person for pull files. */
@FunctionalInterface
public interface PullFileChooser {
    /** The files chosen, in their order by name; empty if the person turned back. */
    List<Path> choose();
}
