package org.pullproof.weather;

import org.pullproof.units.Pressure;

/**
 * The standard atmosphere of ISO 2533 (the same as ICAO's and US 1976 here) below 11 km: 15 °C and 101.325 kPa at sea
 * level, 6.5 K colder each kilometre. Heights are geopotential metres; the elevation of a garage differs from that by less
 * than 2 m.
 *
 * <pre>
 *   T = 288.15 − 0.0065 h,   p = 101325 (T/288.15)^n,   ρ = p/(R T),   n = 9.80665/(0.0065 R),   R = 8314.32/28.9644
 * </pre>
 *
 * <p>Source (P): ISO 2533; values of the ASHRAE Handbook, Fundamentals 2017, chapter 1, table 1 in {@code
 * StandardAtmosphereTest}.
 */
public final class StandardAtmosphere {
    private static final double SEA_LEVEL_PASCAL = 101325;
    private static final double SEA_LEVEL_KELVIN = 288.15;
    private static final double KELVIN_PER_METRE = 0.0065;
    private static final double GAS_CONSTANT = 8314.32 / 28.9644;
    private static final double GRAVITY = 9.80665;
    private static final double EXPONENT = GRAVITY / (KELVIN_PER_METRE * GAS_CONSTANT);
    private static final double SEA_LEVEL_DENSITY = SEA_LEVEL_PASCAL / (GAS_CONSTANT * SEA_LEVEL_KELVIN);
    private static final double LOWEST_METRE = -2000;
    private static final double HIGHEST_METRE = 11000;

    private StandardAtmosphere() {}

    /**
     * @param metres height, −2000 m to 11000 m
     * @throws IllegalArgumentException outside that range
     */
    public static Pressure pressureAt(double metres) {
        if (!(metres >= LOWEST_METRE && metres <= HIGHEST_METRE)) {
            throw new IllegalArgumentException("The standard atmosphere is used from " + LOWEST_METRE + " to "
                    + HIGHEST_METRE + " m, was asked for " + metres + " m");
        }
        double relative = 1 - KELVIN_PER_METRE * metres / SEA_LEVEL_KELVIN;
        return new Pressure(SEA_LEVEL_PASCAL * Math.pow(relative, EXPONENT));
    }

    /** Returns the height in m where the standard atmosphere has that pressure: the pressure altitude. */
    public static double pressureAltitude(Pressure pressure) {
        return height(Math.pow(pressure.pascal() / SEA_LEVEL_PASCAL, 1 / EXPONENT));
    }

    /** Returns the height in m where the standard atmosphere has that density: the density altitude. */
    public static double densityAltitude(double kilogramPerCubicMetre) {
        return height(Math.pow(kilogramPerCubicMetre / SEA_LEVEL_DENSITY, 1 / (EXPONENT - 1)));
    }

    private static double height(double relativeTemperature) {
        return (1 - relativeTemperature) * SEA_LEVEL_KELVIN / KELVIN_PER_METRE;
    }

    /**
     * Returns the station pressure where an altimeter with that setting shows the elevation: the standard atmosphere,
     * shifted so that the setting is its pressure at elevation 0.
     *
     * <p>Exact for the ICAO atmosphere an altimeter is made for (P). Other published forms differ by up to 0.06 %.
     *
     * @param setting the altimeter setting (QNH)
     * @param elevationMetres of the station
     */
    public static Pressure station(Pressure setting, double elevationMetres) {
        return pressureAt(pressureAltitude(setting) + elevationMetres);
    }

    /**
     * How much the pressure at a height changes, relative, when the column of air below is warmer by so much, the pressure at sea
     * level staying: g h ΔT/(R T²), the derivative of the barometric formula (O), T the mean of the standard column.
     */
    static double relativeChangeOfColumn(double metres, double kelvin) {
        double mean = SEA_LEVEL_KELVIN - KELVIN_PER_METRE * metres / 2;
        return GRAVITY * metres * kelvin / (GAS_CONSTANT * mean * mean);
    }
}
