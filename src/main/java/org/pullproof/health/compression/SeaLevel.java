package org.pullproof.health.compression;

import org.pullproof.engine.Geometry;

/**
 * What the air around makes of a compression reading.
 *
 * <p>A gauge shows p_g = p_a (r_e^n − 1): it scales with the absolute pressure p_a of the air. Own derivation [O], confirmed by
 * the altitude table of Army TM 5-3895-359-14&amp;P within 0.6 % [P].
 */
public final class SeaLevel {
    /** Standard atmosphere, Pa (ISO 2533). */
    public static final double PRESSURE = 101_325;

    /** Least polytropic exponent of cranking, from memory [M]. */
    public static final double LEAST_EXPONENT = 1.20;

    /** Greatest polytropic exponent of cranking, from memory [M]. */
    public static final double GREATEST_EXPONENT = 1.30;

    private SeaLevel() {}

    /**
     * Returns a gauge reading as it would be at 101.325 kPa.
     *
     * @param gauge reading over the surroundings, Pa
     * @param station absolute pressure of the air at the test, Pa, greater than zero
     */
    public static double restated(double gauge, double station) {
        return gauge * PRESSURE / station;
    }

    /**
     * Returns the gauge reading of a tight cylinder: an expectation, never a limit. Real gauges read lower by heat, leakage and
     * the volume of the hose.
     *
     * @param geometry measures of the cylinder
     * @param station absolute pressure of the air, Pa
     * @param exponent polytropic exponent, {@link #LEAST_EXPONENT} to {@link #GREATEST_EXPONENT} while cranking
     */
    public static double expected(Geometry geometry, double station, double exponent) {
        return station * (Math.pow(geometry.effectiveRatio(), exponent) - 1);
    }
}
