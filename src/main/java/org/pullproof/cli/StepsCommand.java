package org.pullproof.cli;

import java.nio.file.Path;
import java.time.Clock;
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

/** Lists the steps of the tune-up, ticks them, keeps the off-car shelf, and prints the run card. */
@Command(
        name = "steps",
        description = "Lists the tune-up's steps in order, what is off the car, and what still blocks the start.",
        footer = {"", "Example: pullproof steps grey-coupe --done a --done b --back \"battery lead\""})
final class StepsCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final Clock clock;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Mixin
    private TickOptions ticks;

    @Option(names = "--own", paramLabel = "FILE", description = "Follow the edited steps of this file from now on.")
    private Optional<Path> own = Optional.empty();

    @Option(names = "--no-own", description = "Go back to the program's own steps.")
    private boolean reset;

    @Option(
            names = "--write",
            paramLabel = "FILE",
            description = "Write the steps of this car to a file, to be edited.")
    private Optional<Path> write = Optional.empty();

    @Option(
            names = "--card",
            paramLabel = "FILE",
            description = "Print the steps as a card with boxes to tick: .pdf, .html or .txt.")
    private Optional<Path> card = Optional.empty();

    @Option(names = "--paper", paramLabel = "a4|letter", description = PaperOption.WORDS, converter = PaperOption.class)
    private Optional<Paper> paper = Optional.empty();

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    StepsCommand(Toolbox tools, Clock clock) {
        this.tools = tools;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        Optional<Format> format = card.map(this::format);
        OpenSession open = ticks.applied(tools, clock, ownSteps(tools.desk().open(session)));
        Appraisal appraisal = tools.appraise().of(open, output.figures(tools));
        if (write.isPresent()) {
            tools.editSteps().write(open.session(), write.get());
        }
        if (card.isPresent()) {
            byte[] printed = tools.makeRunCard().bytes(appraisal, format.orElseThrow(), output.paper(tools, paper));
            tools.makeReport().write(printed, card.get());
        }
        if (output.json()) {
            output.print(StepsPrinter.json(appraisal.tuneUp()));
        } else {
            new StepsPrinter(output).print(appraisal.tuneUp());
        }
        return Output.DONE;
    }

    private OpenSession ownSteps(OpenSession open) throws Exception {
        OpenSession next = reset ? tools.editSteps().reset(open) : open;
        return own.isPresent() ? tools.editSteps().read(next, own.get()) : next;
    }

    private Format format(Path file) {
        String name = file.getFileName().toString();
        return Format.of(name)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "A run card is written as .pdf, .html or .txt; give " + name + " one of these endings."));
    }
}
