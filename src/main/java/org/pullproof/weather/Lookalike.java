package org.pullproof.weather;

import java.util.Optional;
import org.pullproof.units.Pressure;
import org.pullproof.units.Quantity;

/**
 * A station pressure that looks like an altimeter setting: the commonest error of the trade, 7 to 9 % of power at 600 m.
 *
 * <p>Refused where weather cannot explain it as a station pressure and can as a setting. Doubted (O) from
 * {@value #WORTH_METRES} m up where it could be either, but taken as a setting it lies nearer to the standard atmosphere.
 *
 * @param typed the pressure as typed
 * @param elevation of the place
 * @param refused whether it cannot be the station pressure
 */
public record Lookalike(Quantity typed, Quantity elevation, boolean refused) {
    /** What weather does to the pressure of a place, kPa (C, common practice without a source). */
    static final double WEATHER_KPA = 4;

    /** Below this the two pressures differ by no more than an ordinary high or low. */
    private static final double WORTH_METRES = 100;

    static Optional<Lookalike> of(Quantity typed, Quantity elevation) {
        Pressure usual = StandardAtmosphere.pressureAt(elevation.si());
        double asStation = distance(typed.pressure(), usual);
        double asSetting = distance(StandardAtmosphere.station(typed.pressure(), elevation.si()), usual);
        boolean refused = asStation > WEATHER_KPA;
        boolean alike = asSetting < asStation && asSetting <= WEATHER_KPA;
        return alike && (refused || elevation.si() >= WORTH_METRES)
                ? Optional.of(new Lookalike(typed, elevation, refused))
                : Optional.empty();
    }

    static boolean near(Pressure pressure, Pressure usual) {
        return distance(pressure, usual) <= WEATHER_KPA;
    }

    private static double distance(Pressure pressure, Pressure usual) {
        return Math.abs(pressure.kilopascal() - usual.kilopascal());
    }

    /** The same figure, taken as the altimeter setting it looks like. */
    public Barometer.Altimeter asSetting() {
        return new Barometer.Altimeter(typed, elevation);
    }

    /** The station pressure it then gives, in the unit typed. */
    public String stationWords() {
        return AirWords.shown(asSetting().station().pascal(), typed.unit());
    }

    public String sentence() {
        String station = stationWords();
        return refused
                ? typed + " at " + elevation + " looks like an altimeter setting: the station pressure there would be "
                        + station + "."
                : typed + " at " + elevation
                        + " lies nearer to an altimeter setting than to a station pressure: taken as a"
                        + " setting, the station pressure is " + station + ".";
    }
}
