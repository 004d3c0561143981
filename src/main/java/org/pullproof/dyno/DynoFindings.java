package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.pullproof.units.Sentence;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Factor;

/**
 * What the pulls amount to.
 *
 * @param answer the answer in one sentence
 * @param pulls every pull in order of time
 * @param setups every setup that has pulls, in order of its first
 * @param bandFrom lower end of the band in use, rpm
 * @param bandTo upper end, rpm
 * @param bandIsDefault whether the band was not told but taken from what all pulls cover
 * @param latestAir the last reading of the air
 * @param latestFactor its factor on the session's standard
 * @param stated what a figure of another sheet amounts to, if one was told
 */
public record DynoFindings(
        Sentence answer,
        List<PullFindings> pulls,
        List<SetupPower> setups,
        OptionalInt bandFrom,
        OptionalInt bandTo,
        boolean bandIsDefault,
        Optional<AirReading> latestAir,
        Optional<Factor> latestFactor,
        Optional<StatedFinding> stated) {
    public DynoFindings {
        pulls = List.copyOf(pulls);
        setups = List.copyOf(setups);
    }

    /** Without a figure of another sheet. */
    public DynoFindings(
            Sentence answer,
            List<PullFindings> pulls,
            List<SetupPower> setups,
            OptionalInt bandFrom,
            OptionalInt bandTo,
            boolean bandIsDefault,
            Optional<AirReading> latestAir,
            Optional<Factor> latestFactor) {
        this(answer, pulls, setups, bandFrom, bandTo, bandIsDefault, latestAir, latestFactor, Optional.empty());
    }

    /** The same findings of these pulls, which have come to other flags. */
    public DynoFindings withPulls(List<PullFindings> others) {
        return new DynoFindings(
                answer, others, setups, bandFrom, bandTo, bandIsDefault, latestAir, latestFactor, stated);
    }

    /**
     * @param setup id
     * @param pulls how many of its pulls count
     * @param meanKw mean band power, kW, corrected if {@code corrected}
     * @param corrected whether every one of them has its air
     */
    public record SetupPower(String setup, int pulls, double meanKw, boolean corrected) {}
}
