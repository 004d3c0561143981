package org.pullproof.app;

import java.time.Duration;

/** Runs something again and again, away from the screen, until it is closed. */
@FunctionalInterface
public interface Ticks {
    /** Stops it when closed. */
    interface Running extends AutoCloseable {
        @Override
        void close();
    }

    Running every(Duration period, Runnable act);
}
