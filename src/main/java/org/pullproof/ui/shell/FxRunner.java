package org.pullproof.ui.shell;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.application.Platform;
import org.pullproof.app.BackgroundRunner;

/** Does one piece of work after another on a thread of its own and hands the outcome to the FX thread. */
public final class FxRunner implements BackgroundRunner, AutoCloseable {
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "pullproof-work");
        // the work writes sessions; the program ends only after it (see close)
        thread.setDaemon(false);
        return thread;
    });

    @Override
    public <T> void run(Callable<T> work, Consumer<T> onSuccess, Consumer<Exception> onFailure) {
        worker.execute(() -> {
            try {
                T result = work.call();
                Platform.runLater(() -> onSuccess.accept(result));
            } catch (Exception failure) {
                Platform.runLater(() -> onFailure.accept(failure));
            }
        });
    }

    /** Finishes what was begun, does this last, and takes nothing more. */
    public void closeAfter(Runnable last) {
        if (!worker.isShutdown()) {
            worker.execute(last);
        }
        close();
    }

    /** Finishes what was begun and takes nothing more. */
    @Override
    public void close() {
        worker.shutdown();
    }
}
