package org.pullproof.dyno;

/**
 * What a pull may show before it is flagged. All of these are judgement of the trade, with no published source; the program's own
 * stand in {@code pull-limits.json}.
 *
 * @param bandMarginRpm A pull reaches at least this far beyond a band that was told, on either side. (rpm)
 * @param sparseRpm Fewer samples than one in this many rpm make a pull sparse. (rpm)
 * @param fewestSamples Fewer samples than this in the band make a pull sparse. (samples)
 * @param gapTimes A step in time longer than this many of the median step is a gap. (times)
 * @param throttleShare The throttle stays above this share of the widest opening of the day. (%)
 * @param throttleFall Nor does it fall by more than this inside the band. (%)
 * @param liftPercentPerTenth A throttle that closes faster than this is a lift. (% in 0.1 s)
 * @param liftTailRpm The end of the band in which the power after a lift is looked at. (rpm)
 * @param liftPowerShare Power below this share of the highest in that end goes with a lift. (%)
 * @param dipPercent The speed falls by no more than this between two samples in the band. (%)
 * @param dipRpm Nor by more than this. (rpm)
 * @param slipPercent The ratio of engine to roll speed rises by no more than this over the band. (%)
 * @param unlockedPercent Where it moves by more than this the converter is not locked, or the gear was changed. (%)
 * @param noiseRmsPercent Power scatters about its own smooth course by no more than this (root mean square). (%)
 * @param noiseSinglePercent Nor is it off by more than this for 0.1 s. (%)
 * @param noiseWindowRpm The width of the local parabola that is that smooth course. (rpm)
 * @param sweepRatePercent The speed rises at a rate within this of the setup's median. (%)
 * @param coolantC Coolant at the start within this of the day's median. (K)
 * @param oilC Oil at the start within this of the day's median. (K)
 * @param intakeC Intake air at the start within this of the day's median. (K)
 * @param soakedC Intake air at the start no more than this above that of the first counted pull. (K)
 * @param lambdaMoved Mean lambda in the band within this of the setup's median. (lambda)
 * @param leanLambda Above this lambda an engine under full load without charging is lean. (lambda)
 * @param leanChargedLambda The same with charging. (lambda)
 * @param leanSeconds For so long. (s)
 * @param leanStep Leaner than the pull before by more than this is lean as well. (lambda)
 * @param weakVolts Supply voltage stays above this. (V)
 * @param fuelFallPercent Fuel pressure falls by no more than this in a pull. (%)
 * @param boostKpa Mean boost in the band within this of the setup's median. (kPa)
 * @param constantPercent A ratio of two columns that scatters less than this is the same all along. (%)
 * @param ratioPercent Power that differs by more than this, all along, from what torque or the roll tells does not fit it. (%)
 * @param factorPercent A ratio within this of a unit's factor is taken for that unit. (%)
 * @param sameCorrelation Two power curves that agree better than this are one pull taken in twice.
 */
public record PullLimits(
        double bandMarginRpm,
        double sparseRpm,
        double fewestSamples,
        double gapTimes,
        double throttleShare,
        double throttleFall,
        double liftPercentPerTenth,
        double liftTailRpm,
        double liftPowerShare,
        double dipPercent,
        double dipRpm,
        double slipPercent,
        double unlockedPercent,
        double noiseRmsPercent,
        double noiseSinglePercent,
        double noiseWindowRpm,
        double sweepRatePercent,
        double coolantC,
        double oilC,
        double intakeC,
        double soakedC,
        double lambdaMoved,
        double leanLambda,
        double leanChargedLambda,
        double leanSeconds,
        double leanStep,
        double weakVolts,
        double fuelFallPercent,
        double boostKpa,
        double constantPercent,
        double ratioPercent,
        double factorPercent,
        double sameCorrelation) {
    public PullLimits {
        if (!(sparseRpm > 0 && noiseWindowRpm > 0 && liftTailRpm > 0)) {
            throw new IllegalArgumentException("Widths in rpm are above 0");
        }
    }
}
