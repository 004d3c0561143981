package org.pullproof.weather;

import org.pullproof.units.Pressure;
import org.pullproof.units.Temperature;

/**
 * What the wet bulb of an aspirated psychrometer tells, the wick wet and not frozen.
 *
 * <pre>
 *   Ws* = 0.621945 ps(t*)/(p − ps(t*))
 *   W   = ((2501 − 2.326 t*) Ws* − 1.006 (t − t*)) / (2501 + 1.86 t − 4.186 t*)
 *   pv  = p W/(0.621945 + W)                                t, t* in °C
 * </pre>
 *
 * <p>Source (P): ASHRAE Handbook, Fundamentals 2017, chapter 1, eq. 20 and 33 (numbers from memory); its example 1 in {@code
 * PsychrometerTest}. ps is {@link MoistAir#saturation}, over water at every temperature. The handbook's own form for a frozen
 * wick is not used: below 0 °C a wet bulb is a poor instrument, and the two differ.
 */
final class Psychrometer {
    static final double MASS_RATIO = 0.621945;
    private static final double CLOSE_KELVIN = 1e-6;

    private Psychrometer() {}

    /**
     * @param wet the wet bulb, at most the temperature of the air
     * @return vapour pressure in Pa; below 0 if no air, not even dry, would cool a wick that far
     */
    static double vapourPascal(Pressure total, Temperature air, Temperature wet) {
        double t = air.celsius();
        double wick = wet.celsius();
        double saturation = MoistAir.saturation(wet).pascal();
        double saturated = MASS_RATIO * saturation / (total.pascal() - saturation);
        double ratio = ((2501 - 2.326 * wick) * saturated - 1.006 * (t - wick)) / (2501 + 1.86 * t - 4.186 * wick);
        return total.pascal() * ratio / (MASS_RATIO + ratio);
    }

    /**
     * The wet bulb of that air, by halving the range from −50 °C to its temperature.
     *
     * @param air any air not drier than dry, and not beyond saturation
     */
    static Temperature wetBulb(AirState air) {
        double low = Temperature.ofCelsius(MoistAir.COLDEST_CELSIUS).kelvin();
        double high = air.temperature().kelvin();
        while (high - low > CLOSE_KELVIN) {
            double middle = (low + high) / 2;
            double vapour = vapourPascal(air.pressure(), air.temperature(), new Temperature(middle));
            if (vapour < air.vapour().pascal()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new Temperature((low + high) / 2);
    }
}
