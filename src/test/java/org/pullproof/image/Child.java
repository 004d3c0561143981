package org.pullproof.image;

import java.io.IOException;

/** A program run to its end, its words going where ours go. */
final class Child {
    private Child() {}

    /**
     * @throws IOException if it cannot be started, or says that it failed
     */
    static void run(String... command) throws IOException {
        ProcessBuilder child = new ProcessBuilder(command).inheritIO();
        // the program asks whether a display is named; the window is drawn in memory
        child.environment().putIfAbsent("DISPLAY", ":in-memory");
        int status = await(child.start());
        if (status != 0) {
            throw new IOException(command[0] + " ended with status " + status + ", 0 would be right");
        }
    }

    private static int await(Process started) throws IOException {
        try {
            return started.waitFor();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while waiting for " + started, stopped);
        }
    }
}
