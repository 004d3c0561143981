package org.pullproof.weather;

import org.pullproof.units.Figures;
import org.pullproof.units.Pressure;
import org.pullproof.units.Unit;

/** Pressures and temperatures in sentences of this room, to the digits a reading has. */
final class AirWords {
    private AirWords() {}

    static String shown(double pascal, Unit unit) {
        int decimals = unit.factor() < 1000 ? 0 : unit.factor() > 50_000 ? 3 : unit == Unit.KPA ? 1 : 2;
        return Figures.number(unit.fromSi(pascal), decimals) + " " + unit.symbol();
    }

    static String kilopascal(Pressure pressure) {
        return shown(pressure.pascal(), Unit.KPA);
    }

    /** A temperature in the unit that the reading beside it was typed in. */
    static String temperature(double kelvin, Unit unit) {
        return Figures.number(unit.fromSi(kelvin), 1) + " " + unit.symbol();
    }
}
