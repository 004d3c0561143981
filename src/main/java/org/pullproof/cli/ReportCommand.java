package org.pullproof.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.report.Format;
import org.pullproof.report.Paper;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the report. */
@Command(
        name = "report",
        description = "Makes the report: every question with its answer, then the evidence.",
        footer = {"", "Example: pullproof report grey-coupe --format pdf -o grey-coupe.pdf"})
final class ReportCommand implements Callable<Integer> {
    /** The spelling on the command line. */
    enum Written {
        text,
        html,
        pdf,
        json
    }

    /** The spelling on the command line. */
    enum Sheet {
        a4,
        letter
    }

    private final Toolbox tools;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Option(
            names = "--format",
            paramLabel = "text|html|pdf|json",
            description = "How it is written; without it, as text.")
    private Optional<Written> format = Optional.empty();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Where to; a file of that name is replaced. Without it, to standard output.")
    private Optional<Path> target = Optional.empty();

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            defaultValue = "a4",
            description = "Paper of the PDF; without it, a4.")
    private Sheet paper;

    @Mixin
    private Output output;

    ReportCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        Written wanted = format.orElse(output.json() ? Written.json : Written.text);
        if (wanted == Written.pdf && target.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "A PDF is not for the terminal: say where to with -o FILE.");
        }
        OpenSession open = tools.desk().open(session);
        output.complain(open.problems());
        byte[] report = bytes(tools.appraise().of(open, output.figures(tools)), wanted);
        if (target.isPresent()) {
            tools.makeReport().write(report, target.get());
        } else {
            output.print(new String(report, StandardCharsets.UTF_8).stripTrailing());
        }
        return open.problems().isEmpty() ? Output.DONE : Output.WRONG_INPUT;
    }

    private byte[] bytes(Appraisal appraisal, Written wanted) {
        return switch (wanted) {
            case json ->
                ReportJson.of(tools.makeReport().model(appraisal)).toString().getBytes(StandardCharsets.UTF_8);
            case text -> bytes(appraisal, Format.TEXT);
            case html -> bytes(appraisal, Format.HTML);
            case pdf -> bytes(appraisal, Format.PDF);
        };
    }

    private byte[] bytes(Appraisal appraisal, Format wanted) {
        return tools.makeReport().bytes(appraisal, session, wanted, paper == Sheet.a4 ? Paper.A4 : Paper.LETTER);
    }
}
