package org.pullproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Creates a session. */
@Command(
        name = "new",
        description = "Creates a session: a folder for everything known about one car's engine.",
        footer = {"", "Example: pullproof new grey-coupe --profile v8-distributor-order-a --name \"grey coupe\""})
final class NewCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(paramLabel = "DIR", description = "The folder to make; it may be there already, but without a session.")
    private Path folder;

    @Option(
            names = "--profile",
            required = true,
            paramLabel = "ID|FILE",
            description = "A profile of the program (see \"pullproof profiles\") or a profile file of your own.")
    private String profile;

    @Option(names = "--name", required = true, paramLabel = "TEXT", description = "What you call the car.")
    private String name;

    @Mixin
    private Output output;

    NewCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        OpenSession made = tools.desk().create(folder, name, tools.profiles().find(profile));
        if (output.json()) {
            output.print(new Json()
                    .put("session", folder.toString())
                    .put("name", made.session().car().name())
                    .put("profile", made.session().profile().id()));
        } else {
            output.print(
                    "Made the session " + folder + ": " + made.session().car().name() + ", "
                            + made.session().profile().name() + ".");
        }
        return Output.DONE;
    }
}
