package org.pullproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.pullproof.app.Toolbox;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Packs a session into one file. */
@Command(
        name = "share",
        description = "Packs the session and its pull files into one zip, to be handed on.",
        footer = {"", "Example: pullproof share grey-coupe -o grey-coupe.zip"})
final class ShareCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "FILE",
            description = "The zip; its name ends with .zip. A file of that name is replaced.")
    private Path target;

    @Mixin
    private Output output;

    ShareCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        String said = tools.share().share(session, target);
        if (output.json()) {
            output.print(new Json().put("file", target.toString()));
        } else {
            output.print(said);
        }
        return Output.DONE;
    }
}
