package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.weather.Factor;
import org.pullproof.weather.PullAir;
import org.pullproof.weather.Standard;

/**
 * One pull with what follows from its file and the air.
 *
 * @param pull as kept
 * @param name setup's name and number: "base-3"
 * @param trace as measured
 * @param curve on the fixed grid, measured and corrected
 * @param air the air it is corrected by, from the readings around it, if there is any
 * @param factor what the measured figures are multiplied by: made from that air, or 1 where the file is corrected already
 * @param peakMeasuredKw highest measured power, kW
 * @param peakMeasuredRpm where, rpm
 * @param bandMeasuredKw mean measured power over the band, kW; absent if the pull does not cover it, or if nobody has said to what
 *     its figures are corrected
 * @param flags what to mind, one sentence each, each beginning with its keyword
 */
public record PullFindings(
        Pull pull,
        String name,
        Trace trace,
        PowerCurve curve,
        Optional<PullAir> air,
        Optional<Factor> factor,
        double peakMeasuredKw,
        double peakMeasuredRpm,
        OptionalDouble bandMeasuredKw,
        List<String> flags) {
    public PullFindings {
        flags = List.copyOf(flags);
    }

    /** Peak power corrected to the session's standard, kW; absent without a factor. */
    public OptionalDouble peakCorrectedKw() {
        return corrected(peakMeasuredKw);
    }

    /** Mean corrected power over the band, kW; absent without a factor or where the band is not covered. */
    public OptionalDouble bandCorrectedKw() {
        return bandMeasuredKw.isPresent() ? corrected(bandMeasuredKw.getAsDouble()) : OptionalDouble.empty();
    }

    /** The standard its figures are on, in words: that of its file or that of its air; "not corrected" without either. */
    public String standardWords() {
        return pull.correctedAlready()
                .or(() -> factor.map(Factor::standard))
                .orElse(Standard.NONE)
                .words();
    }

    /** This pull with other flags: those that need the pulls beside it are found where the changes are judged. */
    public PullFindings withFlags(List<String> others) {
        return new PullFindings(
                pull, name, trace, curve, air, factor, peakMeasuredKw, peakMeasuredRpm, bandMeasuredKw, others);
    }

    private OptionalDouble corrected(double kilowatt) {
        return factor.map(by -> OptionalDouble.of(kilowatt * by.value())).orElse(OptionalDouble.empty());
    }

    /** Whether it can be held against other pulls: it has a figure, and none of its flags says that it was made otherwise. */
    public boolean comparable() {
        return bandMeasuredKw.isPresent() && flags.stream().noneMatch(flag -> FlagWords.hard(flag, factor.isPresent()));
    }

    public boolean excluded() {
        return pull.excluded().isPresent();
    }
}
