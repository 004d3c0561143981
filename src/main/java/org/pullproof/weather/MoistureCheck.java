package org.pullproof.weather;

import java.util.Optional;
import org.pullproof.units.Pressure;
import org.pullproof.units.Quantity;
import org.pullproof.units.Temperature;
import org.pullproof.units.Unit;

/** Whether temperature and moisture as typed can be those of air. */
final class MoistureCheck {
    private static final double COLDEST_CELSIUS = -40;
    private static final double HOTTEST_CELSIUS = 90;

    Optional<String> temperatureProblem(Thermometer thermometer) {
        return possible(thermometer.temperature())
                ? Optional.empty()
                : Optional.of(thermometer.words()
                        + " is not a temperature of intake air: it lies between −40 °C and 90 °C (−40 °F and 194 °F).");
    }

    private static boolean possible(Temperature temperature) {
        return temperature.celsius() >= COLDEST_CELSIUS && temperature.celsius() <= HOTTEST_CELSIUS;
    }

    /** What no air has, whatever its temperature. */
    Optional<String> rangeProblem(Humidity humidity) {
        if (humidity instanceof Humidity.Relative relative) {
            Quantity share = relative.share();
            return share.si() >= 0 && share.si() <= 1
                    ? Optional.empty()
                    : Optional.of(share + " is not a relative humidity: it lies between 0 % and 100 %.");
        }
        return dewPoint(humidity)
                .flatMap(dew -> outside(dew, "a dew point"))
                .or(() -> wetBulb(humidity).flatMap(wet -> outside(wet, "a wet bulb")));
    }

    private static Optional<String> outside(Quantity typed, String what) {
        return possible(typed.temperature())
                ? Optional.empty()
                : Optional.of(typed + " is not " + what + ": it lies between −40 °C and the temperature of the air.");
    }

    private static Optional<Quantity> dewPoint(Humidity humidity) {
        if (humidity instanceof Humidity.DewPoint typed) {
            return Optional.of(typed.temperature());
        }
        return humidity instanceof Humidity.Report told ? told.report().dewPoint() : Optional.empty();
    }

    private static Optional<Quantity> wetBulb(Humidity humidity) {
        return humidity instanceof Humidity.WetBulb typed ? Optional.of(typed.temperature()) : Optional.empty();
    }

    /** What this air cannot have; each reading by itself is possible. */
    Optional<String> problem(TypedAir air) {
        Temperature t = air.thermometer().temperature();
        return dewPoint(air.humidity())
                .filter(dew -> dew.si() > t.kelvin())
                .map(dew -> "The dew point " + dew + " is above the temperature of the air, "
                        + air.thermometer().words() + ": air holds no more vapour than saturates it.")
                .or(() -> wetBulb(air.humidity()).flatMap(wet -> wetBulbProblem(air, wet)))
                .or(() -> vapourProblem(air));
    }

    private static Optional<String> wetBulbProblem(TypedAir air, Quantity wet) {
        Temperature t = air.thermometer().temperature();
        Pressure total = air.barometer().station();
        if (wet.si() > t.kelvin()) {
            return Optional.of("The wet bulb " + wet + " is above the temperature of the air, "
                    + air.thermometer().words() + ": a wet wick is never warmer than the air.");
        }
        return wet.si() + wet.halfStepSi() >= inDryAir(total, t).kelvin()
                ? Optional.empty()
                : Optional.of("The wet bulb " + wet + " is too cold for air of "
                        + air.thermometer().words() + ": even in dry air it would show "
                        + AirWords.temperature(inDryAir(total, t).kelvin(), wet.unit()) + ".");
    }

    private static Temperature inDryAir(Pressure total, Temperature air) {
        return Psychrometer.wetBulb(new AirState(total, new Pressure(0), air));
    }

    private static Optional<String> vapourProblem(TypedAir air) {
        Pressure total = air.barometer().station();
        Pressure vapour = air.humidity().vapour(total, air.thermometer().temperature());
        return vapour.pascal() < total.pascal()
                ? Optional.empty()
                : Optional.of("The vapour alone would have " + AirWords.shown(vapour.pascal(), Unit.KPA)
                        + ", more than the whole " + AirWords.kilopascal(total)
                        + ": check the temperature and the humidity.");
    }
}
