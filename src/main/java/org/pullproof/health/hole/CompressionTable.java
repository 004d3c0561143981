package org.pullproof.health.hole;

import org.pullproof.engine.Geometry;

/** P(a): what a compression gauge shows by the area of the hole, tabulated. Logarithms of Pa over the surroundings. */
public final class CompressionTable {
    private final Areas areas;
    private final double surroundings;
    private final double floor;
    private final double[] lnFirst;
    private final double[] lnLast;

    /**
     * @param oilLeftCm3 oil left in the chamber, cm³; 0 for a dry test
     */
    public CompressionTable(Geometry geometry, GaugeTest how, double oilLeftCm3, Areas areas, Cranking constants) {
        this.areas = areas;
        this.surroundings = how.stationPascal();
        this.floor = constants.floorKpa() * 1e3;
        this.lnFirst = new double[areas.count()];
        this.lnLast = new double[areas.count()];
        CrankedCylinder cylinder = new CrankedCylinder(geometry, how, oilLeftCm3, constants);
        for (int i = 0; i < areas.count(); i++) {
            CrankedCylinder.Shown shown = cylinder.crank(areas.at(i));
            lnFirst[i] = Math.log(Math.max(shown.first(), floor));
            lnLast[i] = Math.log(Math.max(shown.last(), floor));
        }
    }

    /** ln P of the last stroke at a hole of that area in mm². */
    public double lnLast(double areaMm2) {
        return areas.read(lnLast, areaMm2);
    }

    /** ln P of the first stroke at a hole of that area in mm². */
    public double lnFirst(double areaMm2) {
        return areas.read(lnFirst, areaMm2);
    }

    /** ln P of the tightest cylinder of the table. */
    public double lnTight() {
        return lnLast[0];
    }

    /**
     * Returns ln P of the last stroke where only a share φ of the charge comes in.
     *
     * <pre>  P_φ = φ (P + p_a) − p_a</pre>
     */
    public double lnLast(double areaMm2, double filling) {
        double whole = lnLast(areaMm2);
        return filling == 1
                ? whole
                : Math.log(Math.max(filling * (Math.exp(whole) + surroundings) - surroundings, floor));
    }
}
