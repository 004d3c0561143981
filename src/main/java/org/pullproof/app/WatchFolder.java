package org.pullproof.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.pullproof.files.BadFileException;
import org.pullproof.files.NewFiles;

/** Watches a folder that a dyno or logger writes into, and tells of each table that has come and stopped growing. */
public final class WatchFolder {
    private static final Duration LOOK = Duration.ofSeconds(1);

    /** A file that has not changed for so long is complete: writers flush more often (O). */
    private static final Duration STILL = Duration.ofSeconds(2);

    private final Ticks ticks;
    private final Clock clock;

    public WatchFolder(Ticks ticks, Clock clock) {
        this.ticks = ticks;
        this.clock = clock;
    }

    /**
     * Watches until closed.
     *
     * @param arrived receives complete files, in order of their names, away from the screen
     * @param trouble receives a sentence, once, if the folder cannot be read any more
     * @throws BadFileException if the folder cannot be read now
     */
    public Ticks.Running watch(Path folder, Consumer<List<Path>> arrived, Consumer<String> trouble)
            throws BadFileException {
        NewFiles files = NewFiles.in(folder, STILL);
        AtomicBoolean lost = new AtomicBoolean();
        return ticks.every(LOOK, () -> {
            if (lost.get()) {
                return;
            }
            try {
                List<Path> complete = files.complete(clock.instant());
                if (!complete.isEmpty()) {
                    arrived.accept(complete);
                }
            } catch (BadFileException gone) {
                lost.set(true);
                trouble.accept(String.valueOf(gone.getMessage()));
            }
        });
    }
}
