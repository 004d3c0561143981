package org.pullproof.dyno;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.pullproof.dyno.DynoFindings.SetupPower;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.RpmRange;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Factor;
import org.pullproof.weather.Standard;

/** Makes of pulls, their figures and the air of the day what they amount to. Immutable. */
public final class DynoAssessor {
    private final Correction correction;

    public DynoAssessor(Correction correction) {
        this.correction = correction;
    }

    /**
     * Corrects every pull by the reading of its day nearest in time, and takes its power over the band.
     *
     * @param days in order, each with its pulls in order
     * @param setups to name the pulls by
     * @param traces figures by {@link Pull#id()}; a pull without is left out of the findings
     * @param standard that power is corrected to
     * @param told the band the owner told; without it the band is what all counted pulls cover
     * @param figures to write flags and the answer with
     */
    public DynoFindings assess(
            List<DynoDay> days,
            List<Setup> setups,
            Map<String, Trace> traces,
            Standard standard,
            Optional<RpmRange> told,
            Figures figures) {
        List<Made> made = made(days, traces);
        Optional<RpmRange> band = told.or(() -> BandPower.commonTo(made.stream()
                .filter(each -> each.pull().excluded().isEmpty())
                .map(Made::trace)
                .toList()));
        PullFlags flags = new PullFlags(made, band, standard, setups);
        List<PullFindings> pulls = made.stream()
                .map(each -> findings(each, name(setups, each.pull()), standard, band, flags))
                .toList();
        List<SetupPower> powers = SetupMeans.of(pulls);
        Optional<AirReading> latest =
                days.stream().flatMap(day -> day.air().stream()).max(Comparator.comparing(AirReading::time));
        return new DynoFindings(
                new DynoAnswer(standard, band, told.isEmpty(), setups, figures).sentence(pulls, powers),
                pulls,
                powers,
                end(band.map(RpmRange::fromRpm)),
                end(band.map(RpmRange::toRpm)),
                told.isEmpty() && band.isPresent(),
                latest,
                latest.map(air -> correction.factor(standard, air)));
    }

    private static OptionalInt end(Optional<Integer> rpm) {
        return rpm.map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    /** A pull with its figures and the air of its day. */
    record Made(Pull pull, Trace trace, List<AirReading> air) {}

    private static List<Made> made(List<DynoDay> days, Map<String, Trace> traces) {
        List<Made> made = new ArrayList<>();
        for (DynoDay day : days) {
            for (Pull pull : day.pulls()) {
                Optional.ofNullable(traces.get(pull.id()))
                        .ifPresent(trace -> made.add(new Made(pull, trace, day.air())));
            }
        }
        return List.copyOf(made);
    }

    private static String name(List<Setup> setups, Pull pull) {
        return SetupNames.name(setups, pull.setup()) + "-" + pull.number();
    }

    private PullFindings findings(Made made, String name, Standard standard, Optional<RpmRange> band, PullFlags flags) {
        Trace trace = made.trace();
        Optional<AirReading> air = nearest(made.air(), made.pull().time());
        int peak = trace.peak();
        return new PullFindings(
                made.pull(),
                name,
                trace,
                PowerCurve.from(trace),
                air,
                factor(made.pull(), air, standard),
                trace.watt(peak) / 1e3,
                trace.rpm(peak),
                band.map(range -> BandPower.of(trace, range)).orElse(OptionalDouble.empty()),
                flags.of(made));
    }

    /** The reading nearest in time; of two as near the earlier. */
    private static Optional<AirReading> nearest(List<AirReading> air, LocalDateTime time) {
        return air.stream()
                .min(Comparator.comparing((AirReading reading) ->
                                Duration.between(reading.time(), time).abs())
                        .thenComparing(AirReading::time));
    }

    /** Figures corrected already to this standard stand as they are; to another one they cannot be compared. */
    private Optional<Factor> factor(Pull pull, Optional<AirReading> air, Standard standard) {
        if (pull.correctedAlready().isPresent()) {
            return pull.correctedAlready()
                    .filter(already -> already == standard)
                    .map(already -> new Factor(standard, 1, 0, true));
        }
        return standard == Standard.NONE
                ? Optional.of(new Factor(standard, 1, 0, true))
                : air.map(reading -> correction.factor(standard, reading));
    }
}
