package org.pullproof.units;

/**
 * A power. Immutable.
 *
 * @param watt the power in W, finite (negative while coasting)
 */
public record Power(double watt) {
    public Power {
        if (!Double.isFinite(watt)) {
            throw new IllegalArgumentException("A power is finite, was " + watt + " W");
        }
    }

    public static Power ofKilowatt(double kilowatt) {
        return new Power(kilowatt * 1e3);
    }

    public static Power ofHorsepower(double horsepower) {
        return new Power(Unit.HP.toSi(horsepower));
    }

    public double kilowatt() {
        return watt / 1e3;
    }

    public double horsepower() {
        return Unit.HP.fromSi(watt);
    }
}
