package org.pullproof.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.pullproof.app.Toolbox;
import org.pullproof.session.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Reads everything and reports each problem. */
@Command(
        name = "check",
        description =
                "Reads everything of each session and reports every problem with file and place; changes nothing.")
final class CheckCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(arity = "1..*", paramLabel = "SESSION", description = "The sessions' folders.")
    private List<Path> sessions;

    @Mixin
    private Output output;

    CheckCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        List<Problem> problems = new ArrayList<>();
        sessions.forEach(session -> problems.addAll(tools.checkSession().check(session)));
        output.complain(problems);
        if (output.json()) {
            output.print(new Json()
                    .put("problems", problems.stream().map(CheckCommand::json).toList()));
        } else if (problems.isEmpty()) {
            output.print(
                    sessions.size() == 1
                            ? "No problem found."
                            : "No problem found in " + sessions.size() + " sessions.");
        }
        return problems.isEmpty() ? Output.DONE : Output.WRONG_INPUT;
    }

    static Json json(Problem problem) {
        return new Json()
                .put("file", problem.file())
                .put("place", problem.place())
                .put("message", problem.message());
    }
}
