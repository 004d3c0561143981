package org.pullproof.cli;

import java.util.Optional;
import org.pullproof.cli.Arguments.LengthArgument;
import org.pullproof.cli.Arguments.MetarArgument;
import org.pullproof.cli.Arguments.PressureArgument;
import org.pullproof.cli.Arguments.ShareArgument;
import org.pullproof.cli.Arguments.TemperatureArgument;
import org.pullproof.units.Quantity;
import org.pullproof.weather.Barometer;
import org.pullproof.weather.Humidity;
import org.pullproof.weather.Metar;
import org.pullproof.weather.Thermometer;
import org.pullproof.weather.TypedAir;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The options that type the air, by whichever instrument it was read. */
final class AirOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @ArgGroup(multiplicity = "1")
    private PressureTyped pressure = new PressureTyped();

    @Option(
            names = "--elevation",
            paramLabel = "L",
            converter = LengthArgument.class,
            description =
                    "Of the place where the engine breathes, not of the airfield; without it that of the session's"
                            + " car. A station pressure is held against it.")
    private Optional<Quantity> elevation = Optional.empty();

    @Option(
            names = "--read-at",
            paramLabel = "L",
            converter = LengthArgument.class,
            description = "Where a station pressure was read, if that is another height; needs --elevation.")
    private Optional<Quantity> readAt = Optional.empty();

    @Option(
            names = "--temperature",
            paramLabel = "T",
            converter = TemperatureArgument.class,
            description = "Of the air the engine takes in. Only with --metar it may be missing: that of the report then"
                    + " stands, with a wide uncertainty.")
    private Optional<Quantity> temperature = Optional.empty();

    @ArgGroup
    private HumidityTyped humidity = new HumidityTyped();

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
                description = "Altimeter setting of an airfield near; needs an elevation.")
        private Optional<Quantity> setting = Optional.empty();

        @Option(
                names = "--sea-level",
                paramLabel = "P",
                converter = PressureArgument.class,
                description = "Sea-level pressure of a forecast or map; needs an elevation, and is less exact.")
        private Optional<Quantity> seaLevel = Optional.empty();

        @Option(
                names = "--metar",
                paramLabel = "TEXT",
                converter = MetarArgument.class,
                description = "A METAR in quotes: its altimeter setting and dew point; needs an elevation.")
        private Optional<Metar> report = Optional.empty();
    }

    /** How the moisture was read; nothing at all means that none is known. */
    static final class HumidityTyped {
        @Option(
                names = "--humidity",
                paramLabel = "PERCENT",
                converter = ShareArgument.class,
                description =
                        "Relative humidity at the intake. With no moisture told, 20 to 90 %% becomes uncertainty.")
        private Optional<Quantity> relative = Optional.empty();

        @Option(
                names = "--dew-point",
                paramLabel = "T",
                converter = TemperatureArgument.class,
                description = "Dew point.")
        private Optional<Quantity> dewPoint = Optional.empty();

        @Option(
                names = "--wet-bulb",
                paramLabel = "T",
                converter = TemperatureArgument.class,
                description = "Wet bulb, aspirated.")
        private Optional<Quantity> wetBulb = Optional.empty();
    }

    /** The elevation typed, if any. */
    Optional<Quantity> elevation() {
        return elevation;
    }

    /**
     * The air as typed.
     *
     * @param garage elevation of the session's car, for want of one typed
     * @throws ParameterException if a reading that a form needs is not typed
     * @throws IllegalArgumentException with a sentence if the report lacks a group that is needed
     */
    TypedAir air(Optional<Quantity> garage) {
        return new TypedAir(barometer(elevation.or(() -> garage)), thermometer(), moisture());
    }

    private Barometer barometer(Optional<Quantity> here) {
        if (pressure.station.isPresent()) {
            return station(pressure.station.get(), here);
        }
        Quantity height =
                here.orElseThrow(() -> wrongUsage("An altimeter setting, a sea-level pressure and a METAR need"
                        + " the --elevation of the place where the engine breathes, such as 800ft."));
        return pressure.setting
                .<Barometer>map(setting -> new Barometer.Altimeter(setting, height))
                .or(() -> pressure.seaLevel.map(sea -> new Barometer.SeaLevel(sea, height)))
                .orElseGet(() -> new Barometer.Report(pressure.report.orElseThrow(), height));
    }

    private Barometer station(Quantity typed, Optional<Quantity> here) {
        return readAt.<Barometer>map(there -> new Barometer.Elsewhere(
                        typed,
                        there,
                        here.orElseThrow(() ->
                                wrongUsage("--read-at needs the --elevation of the place where the engine breathes."))))
                .orElseGet(() -> new Barometer.Station(typed, elevation));
    }

    private Thermometer thermometer() {
        return temperature
                .<Thermometer>map(Thermometer.Intake::new)
                .or(() -> pressure.report.map(Thermometer.Report::new))
                .orElseThrow(() ->
                        wrongUsage("Missing required option: '--temperature=T', of the air the engine takes in."));
    }

    private Humidity moisture() {
        return humidity.relative
                .<Humidity>map(Humidity.Relative::new)
                .or(() -> humidity.dewPoint.map(Humidity.DewPoint::new))
                .or(() -> humidity.wetBulb.map(Humidity.WetBulb::new))
                .or(() -> pressure.report
                        .filter(report -> report.dewPoint().isPresent())
                        .map(Humidity.Report::new))
                .orElseGet(Humidity.Unknown::new);
    }

    private ParameterException wrongUsage(String sentence) {
        return new ParameterException(spec.commandLine(), sentence);
    }
}
