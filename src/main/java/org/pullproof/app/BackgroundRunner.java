package org.pullproof.app;

import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Runs work away from the screen; the outcome arrives where the screen may be touched. */
public interface BackgroundRunner {
    /**
     * @param work gets immutable values and returns one; it never touches the screen
     * @param onSuccess receives what the work returned
     * @param onFailure receives what it threw
     */
    <T> void run(Callable<T> work, Consumer<T> onSuccess, Consumer<Exception> onFailure);
}
