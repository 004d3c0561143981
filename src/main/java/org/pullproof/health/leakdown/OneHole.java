package org.pullproof.health.leakdown;

/**
 * What one hole does to leak-down and to cranking compression: a large loss in leak-down goes with a small loss of compression.
 * Two readings that no hole explains together are read again.
 *
 * <p>Compression in percent of a tight cylinder by area of the hole, from this project's own model of a cranked cylinder [O]: bore
 * and stroke 86 mm, ratio 10, 200 rpm. For orientation only.
 */
public final class OneHole {
    private static final double[] AREA_MM2 = {0.4, 0.8, 1.2, 2.0, 3.0, 5.0, 8.0};
    private static final double[] COMPRESSION = {100, 95, 90, 81, 71, 55, 38};

    private final double spread;
    private final double slack;

    /**
     * @param spread how far, as a factor, the hole while cranked may differ from the hole at rest: a valve seats differently
     * @param slack percent points of compression on either side
     */
    public OneHole(double spread, double slack) {
        this.spread = spread;
        this.slack = slack;
    }

    /**
     * Whether one hole explains both readings.
     *
     * @param areaMm2 area of the leak found by leak-down, mm²
     * @param compression dry compression in percent of cylinders that do not leak
     */
    public boolean explains(double areaMm2, double compression) {
        return compression >= percentOfTight(areaMm2 * spread) - slack
                && compression <= percentOfTight(areaMm2 / spread) + slack;
    }

    /** Interpolated in the logarithm of the area; held beyond the ends of the table. */
    static double percentOfTight(double areaMm2) {
        int above = 0;
        while (above < AREA_MM2.length && AREA_MM2[above] < areaMm2) {
            above++;
        }
        if (above == 0 || above == AREA_MM2.length) {
            return COMPRESSION[Math.min(above, AREA_MM2.length - 1)];
        }
        double part = Math.log(areaMm2 / AREA_MM2[above - 1]) / Math.log(AREA_MM2[above] / AREA_MM2[above - 1]);
        return COMPRESSION[above - 1] + part * (COMPRESSION[above] - COMPRESSION[above - 1]);
    }
}
