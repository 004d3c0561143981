package org.pullproof.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** The program without a command's name opens the window, as {@code open} without a session does. */
@Command(
        name = "pullproof",
        description = {
            "Is the engine of this used car sound? Is it in tune? Which adjustment really made power? Is it worth more"
                    + " money?",
            "",
            "Without a command the window opens. \"pullproof COMMAND --help\" tells more about a command."
        },
        synopsisSubcommandLabel = "[COMMAND]",
        footer = {"", "Exit status: 0 done, 1 something in the input is wrong, 2 wrong usage."})
final class RootCommand implements Callable<Integer> {
    private final OpenCommand open;

    RootCommand(OpenCommand open) {
        this.open = open;
    }

    @Override
    public Integer call() throws Exception {
        return open.call();
    }
}
