package org.pullproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.PullFindings;
import org.pullproof.units.Figures;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists the pulls, or shows one with its curve. */
@Command(
        name = "pulls",
        description =
                "Lists the pulls in order with peak and band power, measured and corrected; or one with its curve.",
        footer = {"", "Example: pullproof pulls grey-coupe base-3"})
final class PullsCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(index = "0", paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Parameters(index = "1", arity = "0..1", paramLabel = "PULL", description = "One pull by its name, such as base-3.")
    private Optional<String> wanted = Optional.empty();

    @Mixin
    private Output output;

    PullsCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        OpenSession open = tools.desk().open(session);
        Figures figures = output.figures(tools);
        DynoFindings found = tools.appraise().of(open, figures).dyno();
        PullPrinter printer = new PullPrinter(open.session(), figures);
        output.complain(open.problems());
        if (wanted.isPresent()) {
            one(find(found.pulls(), wanted.get()), printer);
        } else {
            all(found, printer);
        }
        return open.problems().isEmpty() ? Output.DONE : Output.WRONG_INPUT;
    }

    private static PullFindings find(List<PullFindings> pulls, String name) {
        return pulls.stream()
                .filter(pull ->
                        pull.name().equalsIgnoreCase(name) || pull.pull().id().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no pull \"" + name + "\"; the pulls are "
                        + pulls.stream().map(PullFindings::name).collect(Collectors.joining(", ")) + "."));
    }

    private void all(DynoFindings found, PullPrinter printer) {
        if (output.json()) {
            output.print(printer.json(found));
            return;
        }
        output.print(found.answer().plain());
        if (!found.pulls().isEmpty()) {
            output.print("");
            output.print(printer.table(found.pulls()));
            output.print(printer.remarks(found.pulls()));
        }
        found.stated().ifPresent(stated -> {
            output.print("");
            output.print(new StatedPrinter(stated).lines());
        });
    }

    private void one(PullFindings pull, PullPrinter printer) {
        if (output.json()) {
            output.print(printer.jsonWithCurve(pull));
            return;
        }
        output.print(printer.table(List.of(pull)));
        output.print(printer.remarks(List.of(pull)));
        output.print("");
        output.print(printer.curveTitle(pull));
        output.print(printer.curve(pull));
    }
}
