package org.pullproof.health;

/**
 * The limits that the assessor judges by. They stand in {@code health-limits.json}, each with where it comes from; most are
 * judgement of this project.
 *
 * @param doubtBelowOthers a dry compression this many percent below the median of the others is in doubt
 * @param repeatApart repeats of one compression reading further apart than this percent of the larger are read again
 * @param oilHelpsGain a wet reading that rises this many percent more than those of level cylinders was helped by oil
 * @param crankingVolts cranking below this voltage makes readings low, V
 * @param thinAirKpa below this station pressure altitude is explained, kPa
 * @param shortOfExpected readings restated for sea level this many percent below what the geometry leads to expect are short of it
 * @param suspectLeak a leak above this percent on the reference tester is cause to suspect the cylinder
 * @param oneHoleSpread factor by which a hole may differ between leak-down and cranking
 * @param oneHoleSlack percent points of compression allowed beside that
 * @param weakDrop a drop this many percent below the median of the others is weak
 * @param weakScatter and this many times the scatter of repeats and of the others
 * @param deadDrop a drop below this percent of the median of the others is no pull at all
 * @param oilFailsPsi oil pressure at hot idle below this fails, psi
 * @param oilPlainPsi oil pressure at hot idle from here needs no second sign, psi
 * @param lowHump a starter hump below this percent of the highest is in doubt
 * @param chainSlack a cam drive with more slack than this is in doubt, degrees of crank
 * @param chargingFrom least voltage of a charging system in order, V
 * @param chargingTo greatest, V
 * @param misfireShare a cylinder with more than this percent of all misfires counted is in doubt
 * @param trimAway a bank whose long-term fuel trim is further than this many percent from 0 is spoken of
 */
public record HealthLimits(
        double doubtBelowOthers,
        double repeatApart,
        double oilHelpsGain,
        double crankingVolts,
        double thinAirKpa,
        double shortOfExpected,
        double suspectLeak,
        double oneHoleSpread,
        double oneHoleSlack,
        double weakDrop,
        double weakScatter,
        double deadDrop,
        double oilFailsPsi,
        double oilPlainPsi,
        double lowHump,
        double chainSlack,
        double chargingFrom,
        double chargingTo,
        double misfireShare,
        double trimAway) {}
