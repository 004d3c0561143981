package org.pullproof.ui;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import org.pullproof.ui.parts.Fonts;

/** Starts JavaFX beside the rest of the program, since each takes a good part of a second. */
public final class ToolkitStart {
    /** Kept, because a logger that nobody holds forgets its level: JavaFX warns of the class path, on which it works. */
    private final Logger javafx = Logger.getLogger("javafx");

    private final CompletableFuture<Void> started = new CompletableFuture<>();

    /** Begins; to be called once. Returns at once. */
    public void begin() {
        javafx.setLevel(Level.SEVERE);
        Thread start = new Thread(this::start, "pullproof-start");
        start.setDaemon(true);
        start.start();
    }

    private void start() {
        try {
            Platform.startup(() -> {
                Fonts.load();
                started.complete(null);
            });
        } catch (RuntimeException | LinkageError failed) {
            started.completeExceptionally(failed);
        }
    }

    /**
     * Waits until windows can be made.
     *
     * @throws IllegalStateException if JavaFX did not start, as on a display that cannot be reached
     */
    void await() {
        try {
            started.join();
        } catch (CompletionException failed) {
            throw new IllegalStateException("The window system did not start: " + failed.getCause(), failed.getCause());
        }
    }
}
