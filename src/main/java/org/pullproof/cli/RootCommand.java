package org.pullproof.cli;

import picocli.CommandLine.Command;

/** The program without a command's name. */
@Command(
        name = "pullproof",
        description =
                "Is the engine of this used car sound? Is it in tune? Which adjustment really made power? Is it worth more"
                        + " money?",
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "Exit status: 0 done, 1 something in the input is wrong, 2 wrong usage."})
final class RootCommand {}
