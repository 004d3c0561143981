package org.pullproof.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.Toolbox;
import org.pullproof.cli.Arguments.LengthArgument;
import org.pullproof.cli.Arguments.PowerArgument;
import org.pullproof.cli.Arguments.PressureArgument;
import org.pullproof.cli.Arguments.ShareArgument;
import org.pullproof.cli.Arguments.TemperatureArgument;
import org.pullproof.cli.Arguments.TimeArgument;
import org.pullproof.units.Quantity;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.AirSummary;
import org.pullproof.weather.TypedAir;
import picocli.CommandLine.ArgGroup;
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
            "With --session the air is kept as a reading of that day and corrects the pulls nearest in time; a session keeps"
                    + " the station pressure and the relative humidity as typed.",
            "",
            "Example: pullproof weather --pressure 98.2kPa --temperature 30C --humidity 60%% --session grey-coupe"
        })
final class WeatherCommand implements Callable<Integer> {
    private final Toolbox tools;

    /** Which pressure was read. */
    static final class PressureTyped {
        @Option(
                names = "--pressure",
                paramLabel = "P",
                converter = PressureArgument.class,
                description = "Station pressure: of the air at the place itself, not reduced to sea level.")
        private Optional<Quantity> station = Optional.empty();

        @Option(
                names = "--altimeter",
                paramLabel = "P",
                converter = PressureArgument.class,
                description = "Altimeter setting of an airfield near; needs --elevation.")
        private Optional<Quantity> setting = Optional.empty();
    }

    /** How the moisture was read. */
    static final class HumidityTyped {
        @Option(
                names = "--humidity",
                paramLabel = "PERCENT",
                converter = ShareArgument.class,
                description = "Relative humidity.")
        private Optional<Quantity> relative = Optional.empty();

        @Option(
                names = "--dew-point",
                paramLabel = "T",
                converter = TemperatureArgument.class,
                description = "Dew point.")
        private Optional<Quantity> dewPoint = Optional.empty();
    }

    @ArgGroup(multiplicity = "1")
    private PressureTyped pressure = new PressureTyped();

    @Option(
            names = "--elevation",
            paramLabel = "L",
            converter = LengthArgument.class,
            description = "Of the place; also holds a station pressure against it.")
    private Optional<Quantity> elevation = Optional.empty();

    @Option(
            names = "--temperature",
            required = true,
            paramLabel = "T",
            converter = TemperatureArgument.class,
            description = "Of the air the engine takes in.")
    private Quantity temperature;

    @ArgGroup(multiplicity = "1")
    private HumidityTyped humidity = new HumidityTyped();

    @Option(
            names = "--power",
            paramLabel = "P",
            converter = PowerArgument.class,
            description = "A measured power to correct to every standard.")
    private Optional<Quantity> power = Optional.empty();

    @Option(names = "--session", paramLabel = "SESSION", description = "Keep the air as a reading in this session.")
    private Optional<Path> session = Optional.empty();

    @Option(
            names = "--at",
            paramLabel = "TIME",
            converter = TimeArgument.class,
            description = "When it was read, such as 2026-06-14T13:40; without it, now.")
    private Optional<LocalDateTime> at = Optional.empty();

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    WeatherCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        AirPrinter printer = new AirPrinter(session.isPresent() ? kept(session.get()) : told(), power);
        if (output.json()) {
            output.print(printer.json());
        } else {
            printer.print(output, output.figures(tools));
        }
        return Output.DONE;
    }

    private AirSummary told() throws Exception {
        return tools.readAir().summary(typed(), elevation);
    }

    private TypedAir typed() {
        return new TypedAir(
                pressure.station
                        .<TypedAir.Barometer>map(TypedAir.Barometer.Station::new)
                        .orElseGet(this::altimeter),
                temperature,
                humidity.relative
                        .<TypedAir.Humidity>map(TypedAir.Humidity.Relative::new)
                        .orElseGet(() -> new TypedAir.Humidity.DewPoint(humidity.dewPoint.orElseThrow())));
    }

    private TypedAir.Barometer altimeter() {
        return new TypedAir.Barometer.Altimeter(
                pressure.setting.orElseThrow(),
                elevation.orElseThrow(
                        () -> wrongUsage("--altimeter needs the --elevation of the place, such as 800ft.")));
    }

    private AirSummary kept(Path folder) throws Exception {
        Quantity station = pressure.station.orElseThrow(
                () -> wrongUsage("A session keeps the station pressure: give --pressure with --session."));
        Quantity relative = humidity.relative.orElseThrow(
                () -> wrongUsage("A session keeps the relative humidity: give --humidity with --session."));
        LocalDateTime time =
                at.orElseGet(() -> LocalDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.MINUTES));
        tools.readAir().summary(typed(), elevation); // the session knows its own elevation, or none
        AirReading reading = new AirReading(time, station, temperature, relative);
        return tools.recordAir().record(tools.desk().open(folder), reading).summary();
    }

    private ParameterException wrongUsage(String sentence) {
        return new ParameterException(spec.commandLine(), sentence);
    }
}
