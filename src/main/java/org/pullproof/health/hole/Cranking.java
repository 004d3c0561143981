package org.pullproof.health.hole;

/**
 * The constants of the cranked cylinder, all judgement of this project; they stand in {@code faults.json}.
 *
 * @param dischargeCoefficient C_d of the hole
 * @param hoseCm3 volume of hose and fitting, always open to the cylinder, cm³
 * @param gaugeCm3 volume behind the gauge's check valve, cm³
 * @param exponent polytropic exponent of cranking
 * @param airKelvin temperature of the air that leaks, K
 * @param stepDegrees step of the crank
 * @param untilDegrees end of a stroke after top dead centre
 * @param startShare pressure where the intake closes, as a share of the air's around
 * @param mostLost largest share of the air lost in one step
 * @param rpm cranking speed where none was recorded
 * @param strokes strokes where none were recorded
 * @param floorKpa least reading of the model, kPa
 */
public record Cranking(
        double dischargeCoefficient,
        double hoseCm3,
        double gaugeCm3,
        double exponent,
        double airKelvin,
        double stepDegrees,
        double untilDegrees,
        double startShare,
        double mostLost,
        double rpm,
        int strokes,
        double floorKpa) {}
