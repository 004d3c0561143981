package org.pullproof.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.pullproof.files.Preferences;

/**
 * A session opened not long ago.
 *
 * @param folder where it lies
 * @param changed when it was written last, empty if it is not there any more
 */
public record RecentSession(Path folder, Optional<Instant> changed) {
    private static final int SHOWN = 5;

    /** The five opened last, the last one first. */
    public static List<RecentSession> of(Preferences preferences) {
        return preferences.recent().stream()
                .limit(SHOWN)
                .map(folder -> new RecentSession(folder, changed(folder)))
                .toList();
    }

    private static Optional<Instant> changed(Path folder) {
        try {
            return Optional.of(
                    Files.getLastModifiedTime(folder.resolve("session.json")).toInstant());
        } catch (IOException notThere) {
            return Optional.empty();
        }
    }

    public boolean isThere() {
        return changed.isPresent();
    }
}
