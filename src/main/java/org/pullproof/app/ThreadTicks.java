package org.pullproof.app;

import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;

/** Ticks on a thread of its own, which does not keep the program alive. */
public final class ThreadTicks implements Ticks {
    @Override
    public Running every(Duration period, Runnable act) {
        ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread thread = new Thread(work, "pullproof-ticks");
            thread.setDaemon(true);
            return thread;
        });
        ScheduledFuture<?> going =
                timer.scheduleWithFixedDelay(act, period.toMillis(), period.toMillis(), TimeUnit.MILLISECONDS);
        return () -> {
            going.cancel(true);
            timer.shutdownNow();
        };
    }
}
