package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.pullproof.dyno.DynoFindings.SetupPower;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.RpmRange;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Factor;
import org.pullproof.weather.PullAir;
import org.pullproof.weather.Standard;

/** Makes of pulls, their figures and the air of the day what they amount to. Immutable. */
public final class DynoAssessor {
    private final Correction correction;
    private final PullLimits limits;

    public DynoAssessor(Correction correction, PullLimits limits) {
        this.correction = correction;
        this.limits = limits;
    }

    /**
     * What the owner told that the pulls themselves do not.
     *
     * @param band that calls are made on; without it the band is what all counted pulls cover
     * @param elevation of the garage, to hold readings of the pressure against
     * @param stated a figure of another sheet
     */
    public record Told(Optional<RpmRange> band, Optional<Quantity> elevation, Optional<StatedFigure> stated) {
        static Told band(Optional<RpmRange> band) {
            return new Told(band, Optional.empty(), Optional.empty());
        }
    }

    /** The same with nothing told but the band. */
    public DynoFindings assess(
            List<DynoDay> days,
            List<Setup> setups,
            Map<String, Trace> traces,
            Standard standard,
            Optional<RpmRange> band,
            Figures figures) {
        return assess(days, setups, traces, standard, Told.band(band), figures);
    }

    /**
     * Corrects every pull by the readings of its day around it in time, see {@link PullAir}, and takes its power over the band.
     *
     * @param days in order, each with its pulls in order
     * @param setups to name the pulls by
     * @param traces figures by {@link Pull#id()}; a pull without is left out of the findings
     * @param standard that power is corrected to
     * @param told by the owner
     * @param figures to write flags and the answer with
     */
    public DynoFindings assess(
            List<DynoDay> days,
            List<Setup> setups,
            Map<String, Trace> traces,
            Standard standard,
            Told told,
            Figures figures) {
        List<Made> made = made(days, traces);
        Optional<RpmRange> band = told.band()
                .or(() -> BandPower.commonTo(made.stream()
                        .filter(each -> each.pull().excluded().isEmpty())
                        .map(Made::trace)
                        .toList()));
        WeatherFlags weather = new WeatherFlags(told.elevation());
        PullFlags flags = new PullFlags(
                made,
                made.stream().map(each -> name(setups, each.pull())).toList(),
                new PullFlags.Band(band, told.band().isPresent()),
                standard,
                weather,
                limits,
                figures);
        List<PullFindings> pulls = IntStream.range(0, made.size())
                .mapToObj(place -> findings(
                        made.get(place),
                        name(setups, made.get(place).pull()),
                        standard,
                        band,
                        factor -> flags.of(place, factor)))
                .toList();
        List<SetupPower> powers = SetupMeans.of(pulls);
        Optional<AirReading> latest =
                days.stream().flatMap(day -> day.air().stream()).max(Comparator.comparing(AirReading::time));
        boolean bandIsDefault = told.band().isEmpty();
        return new DynoFindings(
                new DynoAnswer(standard, band, bandIsDefault, setups, figures, weather).sentence(pulls, powers),
                pulls,
                powers,
                end(band.map(RpmRange::fromRpm)),
                end(band.map(RpmRange::toRpm)),
                bandIsDefault && band.isPresent(),
                latest,
                latest.map(air -> correction.factor(standard, air)),
                told.stated().map(stated -> new StatedJudge(correction, standard, figures).judge(stated, pulls)));
    }

    private static OptionalInt end(Optional<Integer> rpm) {
        return rpm.map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    /** A pull with its figures and the air at it. */
    record Made(Pull pull, Trace trace, Optional<PullAir> air) {
        /** Whether the file says that its figures are corrected already and nobody has answered to what. */
        boolean unanswered() {
            return trace.saysCorrected()
                    && pull.correctedAlready().isEmpty()
                    && !pull.how().asMeasured();
        }
    }

    private static List<Made> made(List<DynoDay> days, Map<String, Trace> traces) {
        List<AirReading> all = days.stream().flatMap(day -> day.air().stream()).toList();
        List<Made> made = new ArrayList<>();
        for (DynoDay day : days) {
            for (Pull pull : day.pulls()) {
                Optional.ofNullable(traces.get(pull.id()))
                        .ifPresent(trace -> made.add(new Made(pull, trace, air(pull, day, all))));
            }
        }
        return List.copyOf(made);
    }

    /**
     * The readings of the pull's own day. Where nobody told when it was made and its file's day has none, the last reading before
     * it was taken in.
     */
    private static Optional<PullAir> air(Pull pull, DynoDay day, List<AirReading> all) {
        return PullAir.at(pull.time(), day.air())
                .or(() -> pull.takenIn().flatMap(taken -> PullAir.lastBefore(taken, all)));
    }

    private static String name(List<Setup> setups, Pull pull) {
        return SetupNames.name(setups, pull.setup()) + "-" + pull.number();
    }

    private PullFindings findings(
            Made made,
            String name,
            Standard standard,
            Optional<RpmRange> band,
            Function<Optional<Factor>, List<String>> flags) {
        Trace trace = made.trace();
        Optional<Factor> factor = made.unanswered() ? Optional.empty() : factor(made.pull(), made.air(), standard);
        int peak = trace.peak();
        return new PullFindings(
                made.pull(),
                name,
                trace,
                PowerCurve.from(trace),
                made.air(),
                factor,
                trace.watt(peak) / 1e3,
                trace.rpm(peak),
                made.unanswered() ? OptionalDouble.empty() : bandMeasured(trace, band),
                flags.apply(factor));
    }

    private static OptionalDouble bandMeasured(Trace trace, Optional<RpmRange> band) {
        return band.map(range -> BandPower.of(trace, range)).orElse(OptionalDouble.empty());
    }

    /** Figures corrected already to this standard stand as they are; to another one they cannot be compared. */
    private Optional<Factor> factor(Pull pull, Optional<PullAir> air, Standard standard) {
        if (pull.correctedAlready().isPresent()) {
            return pull.correctedAlready()
                    .filter(already -> already == standard)
                    .map(Factor::exactlyOne);
        }
        return standard == Standard.NONE
                ? Optional.of(Factor.exactlyOne(standard))
                : air.map(around -> around.factor(standard, correction));
    }
}
