package org.pullproof.units;

/**
 * A pressure, absolute or over the surroundings as its use says. Immutable.
 *
 * @param pascal the pressure in Pa, finite and not negative
 */
public record Pressure(double pascal) {
    public Pressure {
        if (!(pascal >= 0) || Double.isInfinite(pascal)) {
            throw new IllegalArgumentException("A pressure is finite and not negative, was " + pascal + " Pa");
        }
    }

    public static Pressure ofKilopascal(double kPa) {
        return new Pressure(kPa * 1e3);
    }

    public double kilopascal() {
        return pascal / 1e3;
    }

    public double in(Unit unit) {
        return unit.fromSi(pascal);
    }
}
