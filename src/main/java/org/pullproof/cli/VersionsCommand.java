package org.pullproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.KeptSittings.Sitting;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the documents kept of earlier sittings, and goes back to one. */
@Command(
        name = "versions",
        description = {
            "Lists what is kept of earlier sittings, the newest first: each the session as it was",
            "before the first edit of a sitting. Ten are kept. --back puts one in the place of the",
            "present session, which is kept too."
        },
        footer = {"", "Example: pullproof versions grey-coupe --back 0003_2026-06-14_134000.json"})
final class VersionsCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Option(names = "--back", paramLabel = "NAME", description = "Go back to this version, as listed.")
    private Optional<String> back = Optional.empty();

    @Mixin
    private Output output;

    VersionsCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        OpenSession open = tools.desk().open(session);
        if (back.isPresent()) {
            open = tools.keptSittings().back(open, back.get());
        }
        List<Sitting> all = tools.keptSittings().all(open);
        if (output.json()) {
            output.print(new Json()
                    .put("versions", all.stream().map(VersionsCommand::json).toList()));
        } else {
            back.ifPresent(
                    name -> output.print("Went back to " + name + "; what was before is kept as the first below."));
            output.print(lines(all));
        }
        return Output.DONE;
    }

    private static Json json(Sitting sitting) {
        return new Json()
                .put("name", sitting.version().name())
                .put("kept", sitting.version().time().toString())
                .put("readable", sitting.isReadable())
                .put("since", sitting.difference());
    }

    private static List<String> lines(List<Sitting> all) {
        if (all.isEmpty()) {
            return List.of("Nothing is kept yet: the first edit of a sitting keeps one.");
        }
        Table table = new Table().words("name").words("kept").words("done since");
        all.forEach(
                sitting -> table.row(sitting.version().name(), sitting.version().when(), sitting.difference()));
        return table.lines();
    }
}
