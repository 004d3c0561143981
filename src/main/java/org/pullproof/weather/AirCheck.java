package org.pullproof.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Dimension;
import org.pullproof.units.Figures;
import org.pullproof.units.Pressure;
import org.pullproof.units.Quantity;
import org.pullproof.units.Temperature;
import org.pullproof.units.Unit;

/**
 * Whether typed air can exist, and whether its pressure can be that of the place. Only what is impossible is named; what is
 * merely rare is not.
 *
 * <p>Limits (C, common practice without a source): 50 to 110 kPa on any road, −40 to 90 °C in any intake, and at a known
 * elevation the standard atmosphere ± {@value #WEATHER_KPA} kPa, which is more than weather does outside a hurricane.
 */
public final class AirCheck {
    private static final double WEATHER_KPA = 4;
    private static final double LOWEST_KPA = 50;
    private static final double HIGHEST_KPA = 110;
    private static final double COLDEST_CELSIUS = -40;
    private static final double HOTTEST_CELSIUS = 90;

    /**
     * @param air as typed
     * @param elevation of the place, a length, if known; with an altimeter setting it is of no use
     * @return one sentence for each thing that cannot be; empty if the air is possible
     */
    public List<String> problems(TypedAir air, Optional<Quantity> elevation) {
        List<String> problems = new ArrayList<>();
        pressureProblem(air.barometer()).ifPresent(problems::add);
        temperatureProblem(air.temperature()).ifPresent(problems::add);
        humidityProblem(air.humidity()).ifPresent(problems::add);
        if (problems.isEmpty()) {
            vapourProblem(air).ifPresent(problems::add);
            elevation.flatMap(height -> placeProblem(air.barometer(), height)).ifPresent(problems::add);
        }
        return List.copyOf(problems);
    }

    private static Optional<String> pressureProblem(TypedAir.Barometer barometer) {
        if (barometer instanceof TypedAir.Barometer.Altimeter altimeter) {
            return outside(altimeter.setting(), "an altimeter setting", 85, HIGHEST_KPA)
                    .or(() -> elevationProblem(altimeter.elevation()));
        }
        Quantity typed = ((TypedAir.Barometer.Station) barometer).pressure();
        return outside(typed, "a station pressure", LOWEST_KPA, HIGHEST_KPA);
    }

    private static Optional<String> outside(Quantity typed, String what, double lowKpa, double highKpa) {
        double kPa = typed.si() / 1e3;
        return kPa >= lowKpa && kPa <= highKpa
                ? Optional.empty()
                : Optional.of(typed + " is not " + what + ": it lies between " + shown(lowKpa * 1e3, typed.unit())
                        + " and " + shown(highKpa * 1e3, typed.unit()) + ".");
    }

    private static Optional<String> elevationProblem(Quantity elevation) {
        double metres = elevation.requireDimension(Dimension.LENGTH).si();
        return metres >= -500 && metres <= 5500
                ? Optional.empty()
                : Optional.of(elevation + " is not an elevation with roads: it lies between −500 m and 5500 m.");
    }

    private static Optional<String> temperatureProblem(Quantity typed) {
        double celsius = typed.si() - Unit.CELSIUS.offset();
        return celsius >= COLDEST_CELSIUS && celsius <= HOTTEST_CELSIUS
                ? Optional.empty()
                : Optional.of(
                        typed + " is not a temperature of intake air: it lies between −40 °C and 90 °C (−40 °F and"
                                + " 194 °F).");
    }

    private static Optional<String> humidityProblem(TypedAir.Humidity humidity) {
        if (humidity instanceof TypedAir.Humidity.DewPoint dewPoint) {
            return dewPointRange(dewPoint.temperature());
        }
        Quantity share = ((TypedAir.Humidity.Relative) humidity).share();
        return share.si() >= 0 && share.si() <= 1
                ? Optional.empty()
                : Optional.of(share + " is not a relative humidity: it lies between 0 % and 100 %.");
    }

    private static Optional<String> dewPointRange(Quantity typed) {
        double celsius = typed.si() - Unit.CELSIUS.offset();
        return celsius >= COLDEST_CELSIUS && celsius <= HOTTEST_CELSIUS
                ? Optional.empty()
                : Optional.of(typed + " is not a dew point: it lies between −40 °C and the temperature of the air.");
    }

    private static Optional<String> vapourProblem(TypedAir air) {
        Temperature t = air.temperature().temperature();
        if (air.humidity() instanceof TypedAir.Humidity.DewPoint dewPoint
                && dewPoint.temperature().si() > t.kelvin()) {
            return Optional.of("The dew point " + dewPoint.temperature() + " is above the temperature of the air, "
                    + air.temperature() + ": air holds no more vapour than saturates it.");
        }
        Pressure vapour = air.humidity().vapour(t);
        Pressure total = air.barometer().station();
        return vapour.pascal() < total.pascal()
                ? Optional.empty()
                : Optional.of(
                        "The vapour alone would have " + shown(vapour.pascal(), Unit.KPA) + ", more than the whole "
                                + shown(total.pascal(), Unit.KPA) + ": check the temperature and the humidity.");
    }

    private static Optional<String> placeProblem(TypedAir.Barometer barometer, Quantity elevation) {
        if (!(barometer instanceof TypedAir.Barometer.Station station)) {
            return Optional.empty();
        }
        Optional<String> place = elevationProblem(elevation);
        return place.isPresent() ? place : stationProblem(station.pressure(), elevation);
    }

    private static Optional<String> stationProblem(Quantity typed, Quantity elevation) {
        Pressure usual = StandardAtmosphere.pressureAt(elevation.si());
        if (near(typed.pressure(), usual)) {
            return Optional.empty();
        }
        Pressure ifSetting = StandardAtmosphere.station(typed.pressure(), elevation.si());
        return Optional.of(
                near(ifSetting, usual)
                        ? typed + " at " + elevation
                                + " looks like an altimeter setting: the station pressure there would be "
                                + shown(ifSetting.pascal(), typed.unit()) + "."
                        : typed + " cannot be the station pressure at " + elevation + ": it lies between "
                                + shown(usual.pascal() - WEATHER_KPA * 1e3, typed.unit()) + " and "
                                + shown(usual.pascal() + WEATHER_KPA * 1e3, typed.unit()) + " there.");
    }

    private static boolean near(Pressure pressure, Pressure usual) {
        return Math.abs(pressure.kilopascal() - usual.kilopascal()) <= WEATHER_KPA;
    }

    private static String shown(double pascal, Unit unit) {
        int decimals = unit.factor() < 1000 ? 0 : unit.factor() > 50_000 ? 3 : unit == Unit.KPA ? 1 : 2;
        return Figures.number(unit.fromSi(pascal), decimals) + " " + unit.symbol();
    }
}
