package org.pullproof.health.compression;

import org.pullproof.engine.Geometry;

/** What oil in the chamber does to a compression reading by its volume alone, without sealing anything. */
public final class OilVolume {
    /** Oil put in where the quantity was not recorded, m³: 5 mL, judgement of this project. */
    public static final double UNLESS_RECORDED = 5e-6;

    private static final double EXPONENT = (SeaLevel.LEAST_EXPONENT + SeaLevel.GREATEST_EXPONENT) / 2;

    private OilVolume() {}

    /**
     * Returns how much higher a tight cylinder reads with oil in it, percent.
     *
     * <pre>
     *   V_c = V_s/(r_c − 1),   r_w = (r_e V_c − V_o)/(V_c − V_o)
     *   gain = 100 ((r_w^n − 1)/(r_e^n − 1) − 1),   n = 1.25
     * </pre>
     *
     * <p>Own derivation [O] from the closed volume; the exponent is the middle of those of cranking, from memory [M].
     *
     * @param oil volume of the oil, m³, not negative
     * @return infinite where the oil fills half the volume at top dead centre or more: then no gain tells of sealing
     */
    public static double gainPercent(Geometry geometry, double oil) {
        double chamber = geometry.sweptVolume() / (geometry.compressionRatio() - 1);
        if (oil >= chamber / 2) {
            return Double.POSITIVE_INFINITY;
        }
        double dry = geometry.effectiveRatio();
        double wet = (dry * chamber - oil) / (chamber - oil);
        return 100 * ((Math.pow(wet, EXPONENT) - 1) / (Math.pow(dry, EXPONENT) - 1) - 1);
    }
}
