package org.pullproof.simulation;

/**
 * The air of an hour.
 *
 * @param kpa pressure at the place
 * @param celsius at the intake
 * @param humidityPercent relative humidity
 */
record SimulatedAir(double kpa, double celsius, double humidityPercent) {
    private static final double FRICTION_SHARE = 0.15;

    /** Power over that in dry air of 99 kPa and 25 °C. */
    double breathes() {
        double dry = kpa - humidityPercent / 100 * vapourKpa();
        double indicated = dry / 99 * Math.sqrt(298.15 / (celsius + 273.15));
        return (1 + FRICTION_SHARE) * indicated - FRICTION_SHARE;
    }

    /** Saturated vapour by Magnus' short form, good to a per cent here (from memory). */
    private double vapourKpa() {
        return 0.6112 * Math.exp(17.62 * celsius / (243.12 + celsius));
    }
}
