package org.pullproof.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.AddPulls;
import org.pullproof.app.Progress;
import org.pullproof.app.Toolbox;
import org.pullproof.app.TypedLevels;
import org.pullproof.cli.Arguments.ColumnArgument;
import org.pullproof.cli.Arguments.StandardArgument;
import org.pullproof.cli.Arguments.TimeArgument;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFindings;
import org.pullproof.files.BadFileException;
import org.pullproof.units.Quantity;
import org.pullproof.weather.Standard;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes in pull files. */
@Command(
        name = "add-pulls",
        description = {
            "Takes in pull files in the order they were made: all of them or, if one cannot be read, none.",
            "A file may hold several pulls. Each file is kept untouched in the session."
        },
        footer = {
            "",
            "Before the pulls: car strapped down, tyres and brakes looked at, nobody in line with the wheels, exhaust led"
                    + " outside, extinguisher at hand. The dyno operator's word goes before anything here.",
            "",
            "Example: pullproof add-pulls grey-coupe t32-1.csv t32-2.csv --setup \"timing 32\" --level timing=32deg"
        })
final class AddPullsCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(index = "0", paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "The pull files, first made first.")
    private List<Path> files;

    @Option(
            names = "--setup",
            paramLabel = "NAME",
            description = "The setup they were made on; a new name is a change from the present setup. Without it, the"
                    + " present one.")
    private Optional<String> setup = Optional.empty();

    @Option(
            names = "--at",
            paramLabel = "TIME",
            converter = TimeArgument.class,
            description = "When the first was made, such as 2026-06-14T13:40; without it, each file's own time.")
    private Optional<LocalDateTime> at = Optional.empty();

    @Option(
            names = "--already-corrected",
            paramLabel = "STANDARD",
            converter = StandardArgument.class,
            description =
                    "The figures are corrected already, to sae-j1349, sae-j607, iso-1585 or din-70020; none: they are as"
                            + " measured, whatever the file says.")
    private Optional<Standard> correctedAlready = Optional.empty();

    @Option(
            names = "--level",
            paramLabel = "FACTOR=VALUE[UNIT]",
            description = "A numeric setting of that setup, such as timing=32deg; repeatable.")
    private List<String> levels = List.of();

    @Option(
            names = "--column",
            paramLabel = "ROLE=HEADER[:UNIT]",
            converter = ColumnArgument.class,
            description =
                    "Which column is rpm, power, torque, time, roll, throttle, lambda …, such as power=Channel 7:kW;"
                            + " repeatable.")
    private List<ColumnChoice> columns = List.of();

    @Mixin
    private StepOptions step;

    @Mixin
    private DrumTyped drum;

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    AddPullsCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        AddPulls.Wanted wanted = new AddPulls.Wanted(
                files, setup, at, levels(), new HowRead(columns, 1, drum.drum(), false), correctedAlready);
        AddPulls.Outcome outcome = amended(tools.addPulls().add(tools.desk().open(session), wanted, progress()));
        output.complain(outcome.problems());
        List<PullFindings> added = findings(outcome);
        PullPrinter printer = new PullPrinter(outcome.open().session(), output.figures(tools));
        if (output.json()) {
            output.print(
                    new Json().put("added", added.stream().map(printer::added).toList()));
        } else {
            output.print(printer.table(added));
            output.print(printer.remarks(added));
        }
        return Output.DONE;
    }

    /** Told on standard error where a person sees it; on Java 17 there is no console where there is no terminal. */
    @SuppressWarnings("SystemConsoleNull")
    private Progress progress() {
        PrintWriter err = spec.commandLine().getErr();
        return System.console() == null
                ? Progress.unheard()
                : (done, of) ->
                        err.println("reading " + files.get(done).getFileName() + ", " + (done + 1) + " of " + of);
    }

    /** What is told of the change goes to the one that made the setup, once the pulls are in. */
    private AddPulls.Outcome amended(AddPulls.Outcome outcome) throws BadFileException {
        return step.amendment().isEmpty()
                ? outcome
                : outcome.with(tools.amendChange()
                        .madeInto(outcome.open(), outcome.open().session().presentSetup(), step.amendment()));
    }

    private List<PullFindings> findings(AddPulls.Outcome outcome) {
        List<String> ids = outcome.added().stream().map(Pull::id).toList();
        return tools.appraise().of(outcome.open(), output.figures(tools)).dyno().pulls().stream()
                .filter(pull -> ids.contains(pull.pull().id()))
                .toList();
    }

    private Map<String, Quantity> levels() {
        try {
            return TypedLevels.read(levels);
        } catch (IllegalArgumentException wrong) {
            throw wrongUsage(String.valueOf(wrong.getMessage()));
        }
    }

    private ParameterException wrongUsage(String sentence) {
        return new ParameterException(spec.commandLine(), sentence);
    }
}
