package org.pullproof.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.ReadAir;
import org.pullproof.app.Toolbox;
import org.pullproof.car.Fact;
import org.pullproof.cli.Arguments.PowerArgument;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Problem;
import org.pullproof.units.Quantity;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.AirSummary;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Friction;
import org.pullproof.weather.Lookalike;
import org.pullproof.weather.Standard;
import org.pullproof.weather.TypedAir;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Tells the state of the air and the correction factors; with a session, keeps it as a reading of that day. */
@Command(
        name = "weather",
        description = "Tells the state of the air and the correction factors of every standard.",
        footer = {
            "",
            "With --session the air is kept as a reading of that day, as it was typed, and corrects the pulls around it in"
                    + " time.",
            "",
            "Example: pullproof weather --pressure 98.2kPa --temperature 30C --humidity 60%% --session grey-coupe"
        })
final class WeatherCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final Clock clock;

    @Mixin
    private AirOptions typed;

    @Option(
            names = "--power",
            paramLabel = "P",
            converter = PowerArgument.class,
            description = "A measured power to correct to every standard.")
    private Optional<Quantity> power = Optional.empty();

    @Option(
            names = "--friction",
            paramLabel = "P",
            converter = PowerArgument.class,
            description = "Known friction power at that power; SAE J1349 then assumes no efficiency. Needs --power.")
    private Optional<Quantity> friction = Optional.empty();

    @Option(names = "--session", paramLabel = "SESSION", description = "Keep the air as a reading in this session.")
    private Optional<Path> session = Optional.empty();

    @Mixin
    private WhenOption at;

    @Option(names = "--place", paramLabel = "WORDS", description = "Where it was read, in a word or two.")
    private String place = "";

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    WeatherCommand(Toolbox tools, Clock clock) {
        this.tools = tools;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        Optional<Friction> known = knownFriction();
        Optional<OpenSession> open =
                session.isPresent() ? Optional.of(tools.desk().open(session.get())) : Optional.empty();
        AirPrinter printer = printer(open, known);
        if (output.json()) {
            output.print(printer.json());
        } else {
            printer.print(output, output.figures(tools));
        }
        return Output.DONE;
    }

    private Optional<Friction> knownFriction() {
        if (friction.isPresent() && power.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--friction needs the --power it was known at.");
        }
        return friction.map(lost -> new Friction(power.orElseThrow(), lost));
    }

    private AirPrinter printer(Optional<OpenSession> open, Optional<Friction> known) throws BadFileException {
        ReadAir.Told told = told(open);
        AirSummary summary =
                known.map(by -> told.summary().with(by, new Correction())).orElse(told.summary());
        boolean charged = open.map(now -> now.session().profile().charged()).orElse(false);
        return new AirPrinter(
                new ReadAir.Told(summary, told.doubts()), power, known, standard(open), open.isPresent() && !charged);
    }

    private static Standard standard(Optional<OpenSession> open) {
        return open.map(now -> now.session().standard())
                .filter(chosen -> chosen != Standard.NONE)
                .orElse(Standard.SAE_J1349);
    }

    private ReadAir.Told told(Optional<OpenSession> open) throws BadFileException {
        Optional<Quantity> garage = open.flatMap(now -> now.session().car().quantity(Fact.ELEVATION));
        TypedAir air = typed.air(garage);
        Optional<Quantity> height = typed.elevation().or(() -> garage);
        try {
            return open.isPresent()
                    ? tools.recordAir().record(open.get(), reading(air)).told()
                    : tools.readAir().told(air, height, standard(open));
        } catch (BadFileException refused) {
            throw tools.readAir()
                    .lookalike(air, height)
                    .map(likeness -> withWayOut(refused, likeness))
                    .orElse(refused);
        }
    }

    private AirReading reading(TypedAir air) {
        LocalDateTime time = at.by(clock);
        return new AirReading(time, place, air);
    }

    /** What to type if the pressure is the altimeter setting it looks like. */
    private static BadFileException withWayOut(BadFileException refused, Lookalike likeness) {
        String wayOut = " To take it as one, type --altimeter " + bare(likeness.typed()) + " --elevation "
                + bare(likeness.elevation()) + " instead of --pressure.";
        return new BadFileException(refused.problems().stream()
                .map(problem -> problem.message().startsWith(likeness.sentence())
                        ? new Problem(problem.file(), problem.place(), problem.message() + wayOut)
                        : problem)
                .toList());
    }

    private static String bare(Quantity quantity) {
        return quantity.figure().toPlainString() + quantity.unit().symbol();
    }
}
