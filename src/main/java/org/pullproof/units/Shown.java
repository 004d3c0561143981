package org.pullproof.units;

/** A use of a quantity on the screen and on paper: the unit in each system, and the decimals that make sense there. */
public enum Shown {
    AIR_PRESSURE(Unit.INHG, 2, Unit.KPA, 1),
    COMPRESSION(Unit.PSI, 0, Unit.KPA, 0),
    OIL_PRESSURE(Unit.PSI, 0, Unit.KPA, 0),
    VACUUM(Unit.INHG, 1, Unit.KPA, 0),
    AIR_TEMPERATURE(Unit.FAHRENHEIT, 0, Unit.CELSIUS, 0),
    POWER(Unit.HP, 1, Unit.KW, 1),
    TORQUE(Unit.LB_FT, 0, Unit.NM, 0),
    GAP(Unit.IN, 3, Unit.MM, 2),
    LASH(Unit.IN, 3, Unit.MM, 2),
    BORE(Unit.MM, 1, Unit.MM, 1),
    ELEVATION(Unit.FT, 0, Unit.M, 0),
    DISTANCE(Unit.MI, 0, Unit.KM, 0),
    DISPLACEMENT(Unit.LITRE, 1, Unit.LITRE, 1),
    SPEED(Unit.RPM, 0, Unit.RPM, 0);

    private final Unit us;
    private final int usDecimals;
    private final Unit metric;
    private final int metricDecimals;

    Shown(Unit us, int usDecimals, Unit metric, int metricDecimals) {
        this.us = us;
        this.usDecimals = usDecimals;
        this.metric = metric;
        this.metricDecimals = metricDecimals;
    }

    public Unit unit(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    public int decimals(UnitSystem system) {
        return system == UnitSystem.US ? usDecimals : metricDecimals;
    }
}
