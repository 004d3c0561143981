package org.pullproof.units;

/**
 * A thermodynamic temperature. Immutable; below absolute zero cannot be made.
 *
 * @param kelvin the temperature in K, finite and not negative
 */
public record Temperature(double kelvin) {
    private static final double ICE_POINT = 273.15;

    public Temperature {
        if (!(kelvin >= 0) || Double.isInfinite(kelvin)) {
            throw new IllegalArgumentException("A temperature is finite and not below 0 K, was " + kelvin + " K");
        }
    }

    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius + ICE_POINT);
    }

    public double celsius() {
        return kelvin - ICE_POINT;
    }
}
