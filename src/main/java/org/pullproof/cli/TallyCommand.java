package org.pullproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.report.DayCardMaker;
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
            paramLabel = "balance|compression|leakdown|dyno",
            description = "Which test the blank is for.")
    private String test;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description =
                    "Where to, as its ending says: .pdf, .html or .txt; a file of that name is replaced. Without it,"
                            + " as text to standard output.")
    private Optional<Path> target = Optional.empty();

    @Option(names = "--paper", paramLabel = "a4|letter", description = PaperOption.WORDS, converter = PaperOption.class)
    private Optional<Paper> paper = Optional.empty();

    @Mixin
    private Output output;

    TallyCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        Optional<TallyKind> wanted = TallyKind.named(test);
        if (wanted.isEmpty() && !test.equals(DayCardMaker.KEY)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "There is no tally sheet for \"" + test + "\"; there is one for each of " + TallyKind.keys() + ", "
                            + DayCardMaker.KEY + ".");
        }
        Optional<Format> format = target.map(this::format);
        OpenSession open = tools.desk().open(session);
        output.complain(open.problems());
        if (target.isPresent()) {
            Paper sheet = output.paper(tools, paper);
            byte[] blank = tools.makeTally().bytes(sheet(open, wanted), format.orElseThrow(), sheet);
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

    private TallySheet sheet(OpenSession open, Optional<TallyKind> wanted) {
        return wanted.map(kind -> tools.makeTally().sheet(open.session(), kind))
                .orElseGet(() -> tools.makeTally().runCard(tools.appraise().of(open, output.figures(tools))));
    }

    private void print(OpenSession open, Optional<TallyKind> wanted) {
        if (output.json()) {
            output.print(json(sheet(open, wanted), wanted));
        } else if (target.isEmpty()) {
            output.print(tools.makeTally().text(sheet(open, wanted)).stripTrailing());
        }
    }

    private static List<?> rows(TallySheet sheet) {
        List<String> first =
                sheet.rows().stream().map(row -> row.cells().get(0).words()).toList();
        return sheet.key().equals(DayCardMaker.KEY)
                ? first.stream().filter(name -> !name.isEmpty()).toList()
                : first.stream().map(Integer::valueOf).toList();
    }

    private static Json json(TallySheet sheet, Optional<TallyKind> wanted) {
        return new Json()
                .put("test", sheet.key())
                .put("title", sheet.title())
                .put("cautions", sheet.cautions())
                .put(
                        "fields",
                        sheet.fields().stream().map(TallySheet.Field::name).toList())
                .put(
                        "columns",
                        sheet.columns().stream().map(TallySheet.Column::head).toList())
                .put(wanted.isPresent() ? "cylinders" : "pulls", rows(sheet));
    }
}
