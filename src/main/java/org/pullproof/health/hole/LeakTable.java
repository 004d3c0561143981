package org.pullproof.health.hole;

import org.pullproof.health.leakdown.LeakTester;
import org.pullproof.health.leakdown.Nozzle;

/** L(a) and q(a): what a leak-down tester shows by the area of the hole, and how much air goes through it, tabulated. */
public final class LeakTable {
    private final Areas areas;
    private final double[] percent;
    private final double[] gramsASecond;

    /**
     * @param airKelvin temperature of the air, K
     */
    public LeakTable(LeakTester tester, Areas areas, double dischargeCoefficient, double airKelvin) {
        this.areas = areas;
        this.percent = new double[areas.count()];
        this.gramsASecond = new double[areas.count()];
        for (int i = 0; i < areas.count(); i++) {
            double area = areas.at(i) * 1e-6;
            double behind = tester.reading(area);
            percent[i] = tester.percent(behind);
            gramsASecond[i] = 1e3
                    * Nozzle.airFlow(
                            dischargeCoefficient * area,
                            behind + tester.surroundings(),
                            tester.surroundings(),
                            airKelvin);
        }
    }

    /** L, percent. */
    public double percent(double areaMm2) {
        return areas.read(percent, areaMm2);
    }

    /** q, air through the hole, g/s. */
    public double gramsASecond(double areaMm2) {
        return areas.read(gramsASecond, areaMm2);
    }
}
