package org.pullproof.app;

import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Runs work on the spot: for the command line and for tests. */
public final class ImmediateRunner implements BackgroundRunner {
    @Override
    public <T> void run(Callable<T> work, Consumer<T> onSuccess, Consumer<Exception> onFailure) {
        T result;
        try {
            result = work.call();
        } catch (Exception failure) {
            onFailure.accept(failure);
            return;
        }
        onSuccess.accept(result);
    }
}
