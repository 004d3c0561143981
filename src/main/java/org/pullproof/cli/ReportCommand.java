package org.pullproof.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.report.Format;
import org.pullproof.report.Paper;
import org.pullproof.report.ReportPart;
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
        footer = {
            "",
            "Example: pullproof report grey-coupe --format pdf -o grey-coupe.pdf",
            "A sheet for a buyer: pullproof report grey-coupe --parts health --format pdf -o health.pdf"
        })
final class ReportCommand implements Callable<Integer> {
    /** The spelling on the command line. */
    enum Written {
        text,
        html,
        pdf,
        json
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

    @Option(names = "--paper", paramLabel = "a4|letter", description = PaperOption.WORDS, converter = PaperOption.class)
    private Optional<Paper> paper = Optional.empty();

    @Option(
            names = "--parts",
            paramLabel = "PART",
            split = ",",
            description = "Only these parts: summary, health, tune-up, dyno, changes, money, car, pictures, readings;"
                    + " without it, all. Cautions and methods go with every part. Health alone is a sheet for a buyer.")
    private List<String> parts = List.of();

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
        Set<ReportPart> chosen = chosen();
        OpenSession open = tools.desk().open(session);
        output.complain(open.problems());
        byte[] report = bytes(tools.appraise().of(open, output.figures(tools)), chosen, wanted);
        if (target.isPresent()) {
            tools.makeReport().write(report, target.get());
        } else {
            output.print(new String(report, StandardCharsets.UTF_8).stripTrailing());
        }
        return open.problems().isEmpty() ? Output.DONE : Output.WRONG_INPUT;
    }

    private Set<ReportPart> chosen() {
        return parts.isEmpty()
                ? ReportPart.all()
                : parts.stream().map(this::part).collect(Collectors.toSet());
    }

    private ReportPart part(String key) {
        return ReportPart.named(key.strip())
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "\"" + key + "\" is no part of the report; they are " + ReportPart.keys() + "."));
    }

    private byte[] bytes(Appraisal appraisal, Set<ReportPart> chosen, Written wanted) {
        return switch (wanted) {
            case json ->
                ReportJson.of(tools.makeReport().model(appraisal, chosen))
                        .toString()
                        .getBytes(StandardCharsets.UTF_8);
            case text -> bytes(appraisal, chosen, Format.TEXT);
            case html -> bytes(appraisal, chosen, Format.HTML);
            case pdf -> bytes(appraisal, chosen, Format.PDF);
        };
    }

    private byte[] bytes(Appraisal appraisal, Set<ReportPart> chosen, Format wanted) {
        return tools.makeReport().bytes(appraisal, session, chosen, wanted, output.paper(tools, paper));
    }
}
