package org.pullproof.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Dimension;
import org.pullproof.units.Pressure;
import org.pullproof.units.Quantity;

/**
 * Whether typed air can exist, and whether its pressure can be that of the place. What is impossible is refused; a station
 * pressure that is possible but lies nearer to an altimeter setting is doubted, see {@link Lookalike}.
 *
 * <p>Limits (C, common practice without a source): 50 to 110 kPa on any road, −40 to 90 °C in any intake, and at a known
 * elevation the standard atmosphere ± {@value Lookalike#WEATHER_KPA} kPa, which is more than weather does outside a hurricane.
 */
public final class AirCheck {
    private static final double LOWEST_KPA = 50;
    private static final double HIGHEST_KPA = 110;
    private static final double LOWEST_SETTING_KPA = 85;
    private static final double LOWEST_METRE = -500;
    private static final double HIGHEST_METRE = 5500;

    private final MoistureCheck moisture = new MoistureCheck();

    /**
     * @param air as typed
     * @param garage elevation of the place, a length, if known; what was told with the pressure itself comes first
     * @return one sentence for each thing that cannot be; empty if the air is possible
     */
    public List<String> problems(TypedAir air, Optional<Quantity> garage) {
        List<String> problems = new ArrayList<>();
        pressureProblem(air.barometer()).ifPresent(problems::add);
        moisture.temperatureProblem(air.thermometer()).ifPresent(problems::add);
        moisture.rangeProblem(air.humidity()).ifPresent(problems::add);
        if (problems.isEmpty()) {
            moisture.problem(air).ifPresent(problems::add);
            placeProblem(air.barometer(), garage).ifPresent(problems::add);
        }
        return List.copyOf(problems);
    }

    /**
     * The altimeter setting that a station pressure looks like, refused or only doubted; empty if it looks like none, and where no
     * elevation is known.
     */
    public Optional<Lookalike> lookalike(TypedAir air, Optional<Quantity> garage) {
        return air.barometer() instanceof Barometer.Station station
                ? station.elevation()
                        .or(() -> garage)
                        .filter(height -> elevationProblem(height).isEmpty())
                        .flatMap(height -> Lookalike.of(station.pressure(), height))
                : Optional.empty();
    }

    /** What is possible but doubtful, one sentence each. */
    public List<String> doubts(TypedAir air, Optional<Quantity> garage) {
        return lookalike(air, garage).filter(likeness -> !likeness.refused()).map(Lookalike::sentence).stream()
                .toList();
    }

    private static Optional<String> pressureProblem(Barometer barometer) {
        Optional<String> height = barometer.elevation().flatMap(AirCheck::elevationProblem);
        if (height.isPresent()) {
            return height;
        }
        if (barometer instanceof Barometer.Altimeter altimeter) {
            return outside(altimeter.setting(), "an altimeter setting", LOWEST_SETTING_KPA);
        }
        if (barometer instanceof Barometer.SeaLevel sea) {
            return outside(sea.pressure(), "a sea-level pressure", LOWEST_SETTING_KPA);
        }
        if (barometer instanceof Barometer.Elsewhere elsewhere) {
            return outside(elsewhere.pressure(), "a station pressure", LOWEST_KPA)
                    .or(() -> elevationProblem(elsewhere.readAt()));
        }
        return barometer instanceof Barometer.Station station
                ? outside(station.pressure(), "a station pressure", LOWEST_KPA)
                : Optional.empty();
    }

    private static Optional<String> outside(Quantity typed, String what, double lowKpa) {
        double kPa = typed.si() / 1e3;
        return kPa >= lowKpa && kPa <= HIGHEST_KPA
                ? Optional.empty()
                : Optional.of(
                        typed + " is not " + what + ": it lies between " + AirWords.shown(lowKpa * 1e3, typed.unit())
                                + " and " + AirWords.shown(HIGHEST_KPA * 1e3, typed.unit()) + ".");
    }

    private static Optional<String> elevationProblem(Quantity elevation) {
        double metres = elevation.requireDimension(Dimension.LENGTH).si();
        return metres >= LOWEST_METRE && metres <= HIGHEST_METRE
                ? Optional.empty()
                : Optional.of(elevation + " is not an elevation with roads: it lies between −500 m and 5500 m.");
    }

    private static Optional<String> placeProblem(Barometer barometer, Optional<Quantity> garage) {
        if (barometer instanceof Barometer.Station station) {
            Optional<Quantity> height = station.elevation().or(() -> garage);
            return height.flatMap(AirCheck::elevationProblem)
                    .or(() -> height.flatMap(told -> stationProblem(station.pressure(), told)));
        }
        if (barometer instanceof Barometer.Elsewhere elsewhere) {
            return stationProblem(elsewhere.pressure(), elsewhere.readAt());
        }
        return barometer.elevation().flatMap(height -> reducedProblem(barometer, height));
    }

    private static Optional<String> stationProblem(Quantity typed, Quantity elevation) {
        Pressure usual = StandardAtmosphere.pressureAt(elevation.si());
        if (Lookalike.near(typed.pressure(), usual)) {
            return Optional.empty();
        }
        return Lookalike.of(typed, elevation)
                .map(Lookalike::sentence)
                .or(() -> Optional.of(typed + " cannot be the station pressure at " + elevation + ": it lies between "
                        + AirWords.shown(usual.pascal() - Lookalike.WEATHER_KPA * 1e3, typed.unit()) + " and "
                        + AirWords.shown(usual.pascal() + Lookalike.WEATHER_KPA * 1e3, typed.unit()) + " there."));
    }

    /** A pressure reduced to sea level that weather cannot give; the other way round, it may be the station pressure. */
    private static Optional<String> reducedProblem(Barometer barometer, Quantity height) {
        Pressure usual = StandardAtmosphere.pressureAt(height.si());
        Pressure station = barometer.station();
        return Lookalike.near(station, usual)
                ? Optional.empty()
                : Optional.of("With the " + barometer.words() + " the station pressure there would be "
                        + AirWords.kilopascal(station) + ", more than " + Math.round(Lookalike.WEATHER_KPA)
                        + " kPa from the usual " + AirWords.kilopascal(usual)
                        + ": check the elevation, and whether the pressure is a station pressure already.");
    }
}
