package org.pullproof.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.report.Format;
import org.pullproof.report.Paper;
import org.pullproof.report.TallyKind;
import org.pullproof.report.TallySheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the blank of a test. */
@Command(
        name = "tally",
        description =
                "Makes a printable blank for a test: one page, big boxes, in the order of the test for this engine.",
        footer = {"", "Example: pullproof tally grey-coupe --test compression -o compression.pdf"})
final class TallyCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Option(
            names = "--test",
            required = true,
            paramLabel = "balance|compression|leakdown",
            description = "Which test the blank is for.")
    private String test;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description =
                    "Where to, as its ending says: .pdf, .html or .txt; a file of that name is replaced. Without it,"
                            + " as text to standard output.")
    private Optional<Path> target = Optional.empty();

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            defaultValue = "a4",
            description = "Paper of the PDF; without it, a4.")
    private ReportCommand.Sheet paper;

    @Mixin
    private Output output;

    TallyCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        TallyKind wanted = TallyKind.named(test)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "There is no tally sheet for \"" + test + "\"; there is one for each of " + TallyKind.keys()
                                + "."));
        Optional<Format> format = target.map(this::format);
        OpenSession open = tools.desk().open(session);
        output.complain(open.problems());
        if (target.isPresent()) {
            Paper sheet = paper == ReportCommand.Sheet.a4 ? Paper.A4 : Paper.LETTER;
            byte[] blank = tools.makeTally().bytes(open.session(), wanted, format.orElseThrow(), sheet);
            tools.makeReport().write(blank, target.get());
        }
        print(open, wanted);
        return open.problems().isEmpty() ? Output.DONE : Output.WRONG_INPUT;
    }

    private Format format(Path file) {
        String name = file.getFileName().toString();
        return Format.of(name)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "A tally sheet is written as .pdf, .html or .txt; give " + name + " one of these endings."));
    }

    private void print(OpenSession open, TallyKind wanted) {
        if (output.json()) {
            output.print(json(tools.makeTally().sheet(open.session(), wanted)));
        } else if (target.isEmpty()) {
            output.print(tools.makeTally().text(open.session(), wanted).stripTrailing());
        }
    }

    private static Json json(TallySheet sheet) {
        return new Json()
                .put("test", sheet.test().key())
                .put("title", sheet.title())
                .put("cautions", sheet.cautions())
                .put(
                        "fields",
                        sheet.fields().stream().map(TallySheet.Field::name).toList())
                .put(
                        "columns",
                        sheet.columns().stream().map(TallySheet.Column::head).toList())
                .put(
                        "cylinders",
                        sheet.rows().stream()
                                .map(row -> row.cells().get(0).words())
                                .map(Integer::valueOf)
                                .toList());
    }
}
